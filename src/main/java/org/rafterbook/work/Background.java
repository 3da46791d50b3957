package org.rafterbook.work;

import java.util.concurrent.Executor;

/** Runs long work away from the caller's thread and delivers what became of it through the caller's executor. */
public interface Background extends AutoCloseable {

    /** Starts the job and returns at once; steps and the end arrive on {@code deliverTo}. */
    <T> Running submit(Job<? extends T> job, Executor deliverTo, Outcome<? super T> outcome);

    /** Cancels what is running and takes no further job. */
    @Override
    void close();

    /** A small pool of daemon threads. */
    static Background pool(int threads) {
        return new PooledBackground(threads);
    }

    /** Runs each job on the caller's thread before {@code submit} returns: for commands and tests. */
    static Background onTheSpot() {
        return new BackgroundOnTheSpot();
    }
}
