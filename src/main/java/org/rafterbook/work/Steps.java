package org.rafterbook.work;

import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

/** The progress of one job, cancelled from another thread. */
final class Steps implements Progress {

    private final Consumer<Step> listener;
    private volatile boolean cancelled;

    Steps(Consumer<Step> listener) {
        this.listener = listener;
    }

    void cancel() {
        cancelled = true;
    }

    @Override
    public void step(long done, long total, String of) {
        check();
        listener.accept(new Step(done, total, of));
    }

    @Override
    public void check() {
        if (cancelled) {
            throw new CancellationException();
        }
    }

    @Override
    public boolean cancelled() {
        return cancelled;
    }
}
