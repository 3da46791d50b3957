package org.rafterbook.ui;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Executor;
import org.rafterbook.work.Background;
import org.rafterbook.work.Job;
import org.rafterbook.work.Outcome;
import org.rafterbook.work.Running;

/** Starts jobs only when told to, so that cancelling can come first. */
public final class WaitingBackground implements Background {

    private final Deque<Runnable> jobs = new ArrayDeque<>();

    @Override
    public <T> Running submit(Job<? extends T> job, Executor deliverTo, Outcome<? super T> outcome) {
        boolean[] cancelled = new boolean[1];
        jobs.add(() -> {
            if (cancelled[0]) {
                outcome.cancelled();
            } else {
                Background.onTheSpot().submit(job, deliverTo, outcome);
            }
        });
        return new Running() {
            @Override
            public void cancel() {
                cancelled[0] = true;
            }

            @Override
            public boolean ended() {
                return false;
            }
        };
    }

    @Override
    public void close() {}

    /** How many jobs wait. */
    public int count() {
        return jobs.size();
    }

    /** Starts the job that waits longest. */
    public void runOne() {
        jobs.remove().run();
    }

    /** Starts what waits, and what that makes wait. */
    public void run() {
        while (!jobs.isEmpty()) {
            jobs.remove().run();
        }
    }
}
