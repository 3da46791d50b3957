package org.rafterbook.work;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A small pool of daemon threads. Jobs are never interrupted, only asked to stop: an interrupt would close the file
 * channels they may be reading.
 */
final class PooledBackground implements Background {

    private final ExecutorService pool;
    private final Set<Running> open = ConcurrentHashMap.newKeySet();

    PooledBackground(int threads) {
        AtomicInteger number = new AtomicInteger();
        pool = Executors.newFixedThreadPool(threads, job -> {
            Thread thread = new Thread(job, "background-" + number.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        });
    }

    @Override
    public <T> Running submit(Job<? extends T> job, Executor deliverTo, Outcome<? super T> outcome) {
        JobRun<T> run = new JobRun<>(job, deliverTo, outcome);
        open.add(run);
        pool.execute(() -> {
            try {
                run.run();
            } finally {
                open.remove(run);
            }
        });
        return run;
    }

    @Override
    public void close() {
        open.forEach(Running::cancel);
        pool.shutdown();
    }
}
