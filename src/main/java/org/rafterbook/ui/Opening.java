package org.rafterbook.ui;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.work.Job;
import org.rafterbook.work.OpenedBook;

/** Opens one logbook at a time off the JavaFX thread; one that was opened but is no longer wanted is closed again. */
final class Opening {

    private final FxBackground background;
    private final Runnable shown;
    private @Nullable ProgressRule progress;
    private boolean busy;
    private Runnable next = () -> {};

    /**
     * @param shown called when there is progress to be placed
     */
    Opening(FxBackground background, Runnable shown) {
        this.background = background;
        this.shown = shown;
    }

    /** Shows how far it is; null before the first opening, so that the window starts without it. */
    @Nullable
    ProgressRule progress() {
        return progress;
    }

    /** Starts the job; while another runs it waits for its end, and of several that wait the last one asked for is started. */
    void start(Job<OpenedBook> job, Consumer<OpenedBook> then, Consumer<Throwable> refused) {
        if (busy) {
            next = () -> start(job, then, refused);
            return;
        }
        busy = true;
        ProgressRule rule = progress == null ? new ProgressRule() : progress;
        progress = rule;
        shown.run();
        AtomicReference<@Nullable OpenedBook> opened = new AtomicReference<>();
        background
                .<OpenedBook>call(at -> {
                    OpenedBook book = job.run(at);
                    opened.set(book);
                    return book;
                })
                .showing(rule)
                .ifCancelled(() -> ended(() -> dropped(opened.get())))
                .otherwise(failure -> ended(() -> refused.accept(failure)))
                .then(book -> ended(() -> then.accept(book)));
    }

    private void ended(Runnable what) {
        busy = false;
        Runnable waiting = next;
        next = () -> {};
        try {
            what.run();
        } finally {
            waiting.run();
        }
    }

    private void dropped(@Nullable OpenedBook unwanted) {
        if (unwanted != null) {
            background
                    .call(at -> {
                        unwanted.book().close();
                        return true;
                    })
                    .then(closed -> {});
        }
    }
}
