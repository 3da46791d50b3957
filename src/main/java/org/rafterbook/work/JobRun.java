package org.rafterbook.work;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/** One run of a job: computes, passes on the newest step, delivers one end. */
final class JobRun<T> implements Running, Runnable {

    private final Job<? extends T> job;
    private final Executor deliverTo;
    private final Outcome<? super T> outcome;
    private final Steps progress = new Steps(this::step);
    private final AtomicReference<@Nullable Step> newest = new AtomicReference<>();
    private volatile boolean ended;

    JobRun(Job<? extends T> job, Executor deliverTo, Outcome<? super T> outcome) {
        this.job = job;
        this.deliverTo = deliverTo;
        this.outcome = outcome;
    }

    @Override
    public void run() {
        deliver(end());
    }

    private Runnable end() {
        try {
            progress.check();
            T value = job.run(progress);
            return () -> outcome.done(value);
        } catch (CancellationException e) {
            progress.cancel();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            progress.cancel();
        } catch (Throwable t) { // an Error too must reach the person who waits for the answer
            return () -> outcome.failed(t);
        }
        return outcome::cancelled;
    }

    private void deliver(Runnable end) {
        deliverTo.execute(() -> {
            ended = true;
            // cancelled between the job's last line and now: the value is no longer wanted
            if (progress.cancelled()) {
                outcome.cancelled();
            } else {
                end.run();
            }
        });
    }

    /** Only the newest step waits for the receiver, so that a fast job cannot flood it. */
    private void step(Step step) {
        if (newest.getAndSet(step) == null) {
            deliverTo.execute(() -> {
                Step last = newest.getAndSet(null);
                if (last != null && !ended && !progress.cancelled()) {
                    outcome.at(last);
                }
            });
        }
    }

    @Override
    public void cancel() {
        if (!ended) {
            progress.cancel();
        }
    }

    @Override
    public boolean ended() {
        return ended;
    }
}
