package org.rafterbook.ui.shell;

import javafx.scene.Scene;
import javafx.stage.Stage;
import org.rafterbook.ui.look.Fonts;

/** Puts a shell into a stage: fonts, theme and scene fill are there before it is shown. */
public final class MainWindow {

    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double LEAST_WIDTH = 960;
    private static final double LEAST_HEIGHT = 640;

    private MainWindow() {}

    /** Loads the fonts; called once before the first stage. */
    public static void prepare() {
        Fonts.family();
    }

    /** Fills the stage and shows it; from now on nothing thrown on the JavaFX thread ends the window. */
    public static void show(Stage stage, Shell shell, Tools tools) {
        Thread.currentThread().setUncaughtExceptionHandler(tools.errors());
        Scene scene = new Scene(shell, WIDTH, HEIGHT);
        tools.look().dress(scene);
        stage.setMinWidth(LEAST_WIDTH);
        stage.setMinHeight(LEAST_HEIGHT);
        stage.setScene(scene);
        stage.show();
    }
}
