package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.work.Job;

/** The Hall's entries on their way to disk, in order, so that a landing never overtakes its launch. */
final class Entries {

    private final FxBackground background;
    private final Consumer<Throwable> failed;
    private final Runnable idle;
    private final List<Runnable> waiting = new ArrayList<>();
    private int open;

    /**
     * @param idle called when nothing is on its way any more
     */
    Entries(FxBackground background, Consumer<Throwable> failed, Runnable idle) {
        this.background = background;
        this.failed = failed;
        this.idle = idle;
    }

    boolean busy() {
        return open > 0;
    }

    /** Does it once nothing is on its way any more, at once where nothing is. */
    void whenIdle(Runnable what) {
        if (busy()) {
            waiting.add(what);
        } else {
            what.run();
        }
    }

    <T> void enter(Job<T> job, Consumer<? super T> then) {
        enter(job, then, failed);
    }

    /** Makes an entry whose failure has a place of its own, such as below a field. */
    <T> void enter(Job<T> job, Consumer<? super T> then, Consumer<Throwable> otherwise) {
        open++;
        background
                .call(job)
                .entry()
                .ifCancelled(this::ended)
                .otherwise(failure -> {
                    try {
                        otherwise.accept(failure);
                    } finally {
                        ended();
                    }
                })
                .then(value -> {
                    try {
                        then.accept(value);
                    } finally {
                        ended();
                    }
                });
    }

    private void ended() {
        open--;
        if (open == 0) {
            List<Runnable> now = List.copyOf(waiting);
            waiting.clear();
            idle.run();
            now.forEach(Runnable::run);
        }
    }
}
