package org.rafterbook.ui.action;

import java.util.ArrayDeque;
import java.util.Deque;

/** Starts one thing after the other; each says itself when it has ended. Used on the JavaFX thread only. */
final class Lane {

    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private boolean busy;

    /** Starts it now, or when those before it have ended. */
    void add(Runnable start) {
        waiting.add(start);
        if (!busy) {
            next();
        }
    }

    /** What was started last has ended. */
    void next() {
        Runnable first = waiting.poll();
        busy = first != null;
        if (first != null) {
            first.run();
        }
    }
}
