package org.rafterbook.ui;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.look.Fonts;
import org.rafterbook.ui.look.Look;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Theme;
import org.rafterbook.ui.shell.Tools;

/** JavaFX without a screen, for tests and pictures. */
public final class Fx {

    /** Something to run on the JavaFX thread. */
    @FunctionalInterface
    public interface Work<T extends @Nullable Object> {
        T run() throws Throwable;
    }

    private static boolean started;

    private Fx() {}

    /** Starts the toolkit once for this process; headless unless the process says otherwise. */
    public static synchronized void start() {
        if (started) {
            return;
        }
        started = true;
        setUnlessSet("glass.platform", "Monocle");
        setUnlessSet("monocle.platform", "Headless");
        setUnlessSet("headless.geometry", "1920x1080-32");
        setUnlessSet("prism.order", "sw");
        setUnlessSet("prism.lcdtext", "false");
        Window.chooseHowToPaint();
        CountDownLatch up = new CountDownLatch(1);
        try {
            Platform.startup(up::countDown);
        } catch (IllegalStateException running) {
            up.countDown(); // the robot's tests have started it already
        }
        try {
            up.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        Platform.setImplicitExit(false);
        on(Fonts::family);
    }

    private static void setUnlessSet(String key, String value) {
        if (System.getProperty(key) == null) {
            System.setProperty(key, value);
        }
    }

    /** Runs it on the JavaFX thread and waits for its answer; what it throws is thrown here. */
    public static <T extends @Nullable Object> T on(Work<T> work) {
        start();
        FutureTask<T> task = new FutureTask<>(() -> {
            try {
                return work.run();
            } catch (Exception | Error e) {
                throw e;
            } catch (Throwable t) {
                throw new IllegalStateException(t);
            }
        });
        if (Platform.isFxApplicationThread()) {
            task.run();
        } else {
            Platform.runLater(task);
        }
        try {
            return task.get();
        } catch (ExecutionException e) {
            return sneak(e.getCause());
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Something to do on the JavaFX thread. */
    @FunctionalInterface
    public interface Task {
        void run() throws Exception;
    }

    /** Does it on the JavaFX thread and waits until it is done. */
    public static void run(Task task) {
        on(() -> {
            task.run();
            return true;
        });
    }

    @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"})
    private static <T extends @Nullable Object, E extends Throwable> T sneak(@Nullable Throwable cause) throws E {
        throw (E) cause;
    }

    /** Puts the node into a dressed scene of 1280 x 800 without a window; enough for style, layout and key events. */
    public static Scene show(Node node) {
        return show(node, 1280, 800);
    }

    /** The same at another size. */
    public static Scene show(Node node, double width, double height) {
        Parent root = node instanceof Parent parent ? parent : new StackPane(node);
        Scene scene = new Scene(root, width, height);
        Look.dress(scene, Theme.LIGHT, TextSize.NORMAL);
        layOut(scene);
        return scene;
    }

    /** Applies style and layout now. */
    public static void layOut(Scene scene) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
    }

    /** A real (headless) window, for tests that need the focus; close it at the end. */
    public static Stage window(Parent root) {
        Stage stage = new Stage();
        Scene scene = new Scene(root, 1280, 800);
        Look.dress(scene, Theme.LIGHT, TextSize.NORMAL);
        stage.setScene(scene);
        stage.show();
        stage.requestFocus();
        return stage;
    }

    /** Presses, types and releases a key where the focus is; {@code typed} is empty for keys that write nothing. */
    public static void key(Scene scene, KeyCode code, String typed, boolean control, boolean shift) {
        Node target = scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
        target.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, control, false, false));
        Node now = scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
        if (!typed.isEmpty()) {
            now.fireEvent(new KeyEvent(KeyEvent.KEY_TYPED, typed, "", KeyCode.UNDEFINED, shift, control, false, false));
        }
        now.fireEvent(new KeyEvent(KeyEvent.KEY_RELEASED, "", "", code, shift, control, false, false));
    }

    /** Presses a key without modifiers. */
    public static void key(Scene scene, KeyCode code, String typed) {
        key(scene, code, typed, false, false);
    }

    /** Clicks into the middle of the node. */
    public static void click(Node node) {
        Bounds bounds = node.getBoundsInLocal();
        click(node, bounds.getCenterX(), bounds.getCenterY());
    }

    /** Clicks at a point of the node. */
    public static void click(Node node, double x, double y) {
        Point2D at = node.localToScene(x, y); // an event without a source is placed in the scene
        for (var type : List.of(
                MouseEvent.MOUSE_MOVED,
                MouseEvent.MOUSE_PRESSED,
                MouseEvent.MOUSE_RELEASED,
                MouseEvent.MOUSE_CLICKED)) {
            node.fireEvent(new MouseEvent(
                    type,
                    at.getX(),
                    at.getY(),
                    at.getX(),
                    at.getY(),
                    MouseButton.PRIMARY,
                    1,
                    false,
                    false,
                    false,
                    false,
                    true,
                    false,
                    false,
                    true,
                    false,
                    true,
                    null));
        }
    }

    /** Tools whose background work is done on the spot and whose dialogs must not be asked. */
    public static Tools tools() {
        Errors errors = new Errors();
        return new Tools(errors, new Look(), FxBackground.onTheSpot(errors), new NoDialogs());
    }
}
