package org.rafterbook.ui.shell;

import javafx.scene.Scene;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.look.Fonts;
import org.rafterbook.ui.look.Look;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Theme;

/** Puts a shell into a stage: fonts, theme and scene fill are there before it is shown. */
public final class MainWindow {

    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double LEAST_WIDTH = 960;
    private static final double LEAST_HEIGHT = 640;

    private MainWindow() {}

    /**
     * Loads the fonts and dresses a scene that nobody sees. All that the first screen is made of is loaded by that while
     * the logbook is being opened on another thread; called once before the first stage.
     */
    public static void prepare() {
        Fonts.family();
        Keys keys = new Keys(new Errors());
        VBox one = new VBox(
                Words.prose("of each kind"),
                Buttons.main(keys.action("one", () -> {}), Words.body("of each")),
                Buttons.secondary(keys.on("O", "one", () -> {})),
                new MarkView(VersionMark.dealt(0)));
        Scene scene = new Scene(one, WIDTH, HEIGHT);
        Look.dress(scene, Theme.LIGHT, TextSize.NORMAL);
        one.applyCss();
        one.layout();
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
