package org.rafterbook.ui.hall;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.work.Job;

/** Makes entries in the background one after the other, so that a landing never overtakes its launch. */
final class Entries {

    private final FxBackground background;
    private final Consumer<Throwable> failed;
    private final Runnable kept;
    private final Runnable idle;
    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private boolean busy;

    /**
     * @param kept called after each entry that is on disk
     * @param idle called when nothing waits any more
     */
    Entries(FxBackground background, Consumer<Throwable> failed, Runnable kept, Runnable idle) {
        this.background = background;
        this.failed = failed;
        this.kept = kept;
        this.idle = idle;
    }

    boolean busy() {
        return busy;
    }

    <T> void enter(Job<T> job, Consumer<? super T> then) {
        enter(job, then, failed);
    }

    /** Makes an entry whose failure has a place of its own, such as below a field. */
    <T> void enter(Job<T> job, Consumer<? super T> then, Consumer<Throwable> otherwise) {
        waiting.add(() -> background
                .call(job)
                .ifCancelled(this::next)
                .otherwise(failure -> {
                    try {
                        otherwise.accept(failure);
                    } finally {
                        next();
                    }
                })
                .then(value -> {
                    try {
                        kept.run();
                        then.accept(value);
                    } finally {
                        next();
                    }
                }));
        if (!busy) {
            busy = true;
            next();
        }
    }

    private void next() {
        Runnable first = waiting.poll();
        if (first != null) {
            first.run();
        } else {
            busy = false;
            idle.run();
        }
    }
}
