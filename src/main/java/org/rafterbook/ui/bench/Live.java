package org.rafterbook.ui.bench;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.work.Job;

/**
 * Work that follows a pointer: one job runs at a time and the newest one asked for meanwhile runs next, so that every
 * answer that was computed is also shown and none waits in a queue. Used on the JavaFX thread.
 */
final class Live<T> {

    private final FxBackground background;
    private final Consumer<? super T> taker;
    private @Nullable Job<? extends T> next;
    private boolean running;
    private int era;

    Live(FxBackground background, Consumer<? super T> taker) {
        this.background = background;
        this.taker = taker;
    }

    /** Asks for this job, in the place of one that still waits. */
    void ask(Job<? extends T> job) {
        next = job;
        if (!running) {
            start();
        }
    }

    /** Answers to what was asked so far are no longer wanted. */
    void forget() {
        next = null;
        era++;
    }

    private void start() {
        Job<? extends T> job = next;
        next = null;
        if (job == null) {
            return;
        }
        running = true;
        int asked = era;
        background
                .<T>call(job)
                .otherwise(failure -> {
                    running = false;
                    start();
                    throw failure instanceof RuntimeException e ? e : new IllegalStateException(failure);
                })
                .then(answer -> {
                    running = false;
                    if (asked == era) {
                        taker.accept(answer);
                    }
                    start();
                });
    }
}
