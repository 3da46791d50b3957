package org.rafterbook.work;

import java.util.concurrent.Executor;

/** Runs each job before {@code submit} returns. */
final class BackgroundOnTheSpot implements Background {

    @Override
    public <T> Running submit(Job<? extends T> job, Executor deliverTo, Outcome<? super T> outcome) {
        JobRun<T> run = new JobRun<>(job, deliverTo, outcome);
        run.run();
        return run;
    }

    @Override
    public void close() {
        // nothing is ever running when the caller has the thread
    }
}
