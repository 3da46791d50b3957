package org.rafterbook.bench;

import com.sun.javafx.tk.RenderJob;
import com.sun.javafx.tk.Toolkit;
import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;
import javafx.application.Platform;
import javafx.scene.Scene;

/** Tells when a frame is painted: not when it is laid out, but when the renderer is through with it. */
final class Painted {

    private Painted() {}

    /**
     * Waits for the first frame in which something holds.
     *
     * @param shows asked on the JavaFX thread after each layout
     * @param at gets the reading of {@link System#nanoTime()} at which that frame was painted, on the renderer's thread
     */
    static void when(Scene scene, BooleanSupplier shows, LongConsumer at) {
        scene.addPostLayoutPulseListener(new Runnable() {
            @Override
            public void run() {
                if (shows.getAsBoolean()) {
                    scene.removePostLayoutPulseListener(this);
                    // after this pulse has handed its frame to the renderer, whose jobs go one after the other
                    Platform.runLater(
                            () -> Toolkit.getToolkit().addRenderJob(new RenderJob(() -> at.accept(System.nanoTime()))));
                }
            }
        });
    }
}
