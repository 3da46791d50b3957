package org.rafterbook.ui;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.look.Look;
import org.rafterbook.ui.shell.FxDialogs;
import org.rafterbook.ui.shell.MainWindow;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.work.Background;
import org.rafterbook.work.Shelf;

/** The window as the program starts it. */
public final class Window {

    /** How long the last entries may take to reach the disk after the window is gone. */
    private static final int LAST_ENTRIES_S = 20;

    /** From the first frame until the places are made ahead: by then today's session stands. */
    private static final String PICTURES_OF_BACKGROUNDS = "prism.disableRegionCaching";

    private static final Duration QUIET = Duration.seconds(1);

    private Window() {}

    /**
     * To be called before the toolkit starts. Rounded backgrounds are painted as what they are: stretching the pictures that
     * JavaFX keeps of them takes most of a frame where no graphics card does it.
     */
    public static void chooseHowToPaint() {
        if (System.getProperty(PICTURES_OF_BACKGROUNDS) == null) {
            System.setProperty(PICTURES_OF_BACKGROUNDS, "true");
        }
    }

    /** Starts the toolkit; false where there is no display. */
    public static boolean start() {
        chooseHowToPaint();
        try {
            Platform.startup(() -> {
                Platform.setImplicitExit(false);
                MainWindow.prepare();
            });
            return true;
        } catch (UnsupportedOperationException e) {
            return false;
        }
    }

    /**
     * Shows the window and waits until it is closed. It opens on the flyer's own logbook; where there is none yet, on the
     * first start; where it is refused, on the sentence why.
     */
    public static void untilClosed(Shelf shelf) {
        CountDownLatch hidden = new CountDownLatch(1);
        CountDownLatch settled = new CountDownLatch(1);
        Outset outset = Outset.of(shelf);
        show(shelf, outset, hidden, settled);
        outset.readToday();
        try {
            hidden.await();
            settled.await(LAST_ENTRIES_S, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void show(Shelf shelf, Outset outset, CountDownLatch hidden, CountDownLatch settled) {
        Background pool = Background.pool(2);
        Platform.runLater(() -> {
            Stage stage = new Stage();
            Errors errors = new Errors();
            Look look = new Look();
            Supplier<FxBackground> background = () -> FxBackground.on(pool, errors);
            Tools tools = new Tools(errors, look, background.get(), new FxDialogs(() -> stage, look));
            OpenWindow window = new OpenWindow(shelf, tools, background, stage::setTitle, outset);
            stage.setOnCloseRequest(event -> {
                if (!window.mayBeLeft()) {
                    event.consume();
                }
            });
            stage.setOnHidden(event -> {
                hidden.countDown();
                window.close(settled::countDown);
            });
            MainWindow.show(stage, window.shell(), tools);
            tools.background().afterFrame(stage.getScene(), () -> {
                window.makeOwn();
                PauseTransition quiet = new PauseTransition(QUIET);
                quiet.setOnFinished(event -> window.prepare());
                quiet.play();
            });
        });
    }

    /** Ends the toolkit. */
    public static void end() {
        Platform.exit();
    }
}
