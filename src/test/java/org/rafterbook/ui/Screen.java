package org.rafterbook.ui;

import java.util.function.Function;
import javafx.scene.Parent;
import javafx.scene.Scene;
import org.rafterbook.ui.shell.Tools;

/**
 * A picture that {@link Snapshots} takes.
 *
 * @param name file name without ending, such as {@code hall-preparing}
 * @param make builds the screen on the JavaFX thread: a whole shell or any other node; data is loaded on the spot
 * @param after what to do once it is laid out, such as pressing Alt or opening help
 */
public record Screen(String name, Function<Tools, Parent> make, After after) {

    /** What happens before the picture is taken. */
    @FunctionalInterface
    public interface After {
        void act(Scene scene);
    }

    public Screen(String name, Function<Tools, Parent> make) {
        this(name, make, scene -> {});
    }
}
