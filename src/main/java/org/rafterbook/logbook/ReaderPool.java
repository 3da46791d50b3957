package org.rafterbook.logbook;

import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Connections for reading: as many as there are questions at once, kept for the next. */
final class ReaderPool implements AutoCloseable {

    private final Supplier<Sql> opener;
    private final ConcurrentLinkedDeque<Sql> idle = new ConcurrentLinkedDeque<>();
    private volatile boolean closed;

    ReaderPool(Supplier<Sql> opener) {
        this.opener = opener;
    }

    /** A connection of its own, to be closed by the caller. */
    Sql open() {
        return opener.get();
    }

    /** Runs the work on one moment's state of the logbook. */
    <T extends @Nullable Object> T snapshot(Function<Sql, T> work) {
        if (closed) {
            throw new IllegalStateException("the logbook is closed");
        }
        Sql known = idle.pollFirst();
        Sql sql = known == null ? opener.get() : known;
        try {
            return sql.snapshot(work);
        } finally {
            idle.addFirst(sql);
            if (closed) {
                close();
            }
        }
    }

    @Override
    public void close() {
        closed = true;
        for (Sql sql = idle.pollFirst(); sql != null; sql = idle.pollFirst()) {
            sql.close();
        }
    }
}
