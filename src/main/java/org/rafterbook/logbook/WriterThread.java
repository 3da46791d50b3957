package org.rafterbook.logbook;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The one thread that writes, with its connection. Callers wait until their work is committed. */
final class WriterThread implements AutoCloseable {

    private final Sql sql;
    private final ExecutorService executor;
    private volatile @Nullable Thread thread;

    WriterThread(Sql sql) {
        this.sql = sql;
        this.executor = Executors.newSingleThreadExecutor(task -> {
            Thread writer = new Thread(task, "logbook writer");
            writer.setDaemon(true);
            thread = writer;
            return writer;
        });
    }

    /** Runs the work in one transaction: when this returns it is on disk, when it throws nothing of it is. */
    <T extends @Nullable Object> T entry(Function<Sql, T> work) {
        if (Thread.currentThread() == thread) {
            throw new IllegalStateException("an entry cannot be made within an entry");
        }
        Future<T> outcome = submit(() -> sql.entry(work));
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return outcome.get();
                } catch (InterruptedException e) {
                    // The caller must learn whether the entry was kept, so the wait goes on.
                    interrupted = true;
                } catch (ExecutionException e) {
                    throw rethrown(e.getCause());
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private <T extends @Nullable Object> Future<T> submit(Callable<T> work) {
        try {
            return executor.submit(work);
        } catch (RejectedExecutionException e) {
            throw new IllegalStateException("the logbook is closed", e);
        }
    }

    private static RuntimeException rethrown(@Nullable Throwable cause) {
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof RuntimeException known ? known : new IllegalStateException(cause);
    }

    @Override
    public void close() {
        executor.execute(sql::close);
        executor.shutdown();
        boolean interrupted = false;
        while (true) {
            try {
                if (executor.awaitTermination(1, TimeUnit.MINUTES)) {
                    break;
                }
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
