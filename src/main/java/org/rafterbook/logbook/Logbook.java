package org.rafterbook.logbook;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;

/** A logbook: one SQLite file. Safe for use by any number of threads. */
public final class Logbook implements AutoCloseable {

    private record Outcome<T extends @Nullable Object>(T value, boolean changed) {}

    private final Path file;
    private final @Nullable WindowLock lock;
    private final @Nullable WriterThread writer;
    private final ReaderPool readers;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    private Logbook(Path file, @Nullable WindowLock lock, @Nullable WriterThread writer, ReaderPool readers) {
        this.file = file;
        this.lock = lock;
        this.writer = writer;
        this.readers = readers;
    }

    /** Opens a logbook. What is in the way comes out as a UserError with a sentence, and no harm is done to the file. */
    public static Logbook open(Path file, Mode mode) {
        return open(file, mode, Migrations.STANDARD);
    }

    static Logbook open(Path given, Mode mode, Migrations migrations) {
        LogbookFile file = LogbookFile.at(given, migrations);
        Path path = file.path();
        if (mode == Mode.CREATE) {
            file.makeFolder();
        } else {
            file.mustExist();
        }
        if (mode == Mode.READ_ONLY) {
            file.edition();
            return new Logbook(path, null, null, new ReaderPool(() -> Connections.reader(path)));
        }
        WindowLock lock = WindowLock.take(path);
        file.makeIfAbsent();
        int edition = file.edition();
        if (edition < migrations.edition()) {
            migrations.bringUpToDate(path, edition);
        }
        return new Logbook(
                path, lock, new WriterThread(Connections.writer(path)), new ReaderPool(() -> Connections.reader(path)));
    }

    /** Where it lies. */
    public Path file() {
        return file;
    }

    /** True where nothing can be entered. */
    public boolean readOnly() {
        return writer == null;
    }

    /**
     * Makes one entry: all of it is on disk when this returns, nothing of it when this throws.
     *
     * @param why what the flyer did, in the words undo will say
     */
    public <T extends @Nullable Object> T enter(String why, Entry<T> entry) {
        return changing(sql -> {
            ChangeLog log = new ChangeLog(sql, why, null);
            RowWriter rows = new RowWriter(sql, log);
            try {
                return new Outcome<>(entry.make(rows), !log.isEmpty());
            } finally {
                rows.end();
            }
        });
    }

    /** Asks a question on the caller's thread. */
    public <T extends @Nullable Object> T read(Query<T> query) {
        return readers.snapshot(sql -> {
            RowReader rows = new RowReader(sql);
            try {
                return query.ask(rows);
            } finally {
                rows.end();
            }
        });
    }

    /** What undo would take back now, in the words of its entry; null when there is nothing. */
    public @Nullable String undoable() {
        Undo.Logged next = readers.snapshot(Undo::next);
        return next == null ? null : next.why();
    }

    /** Takes back the newest entry not yet taken back, by an entry of its own; a UserError when there is none. */
    public Undone undo() {
        return changing(sql -> new Outcome<>(Undo.run(sql), true));
    }

    /** Has the listener called after each change, on the thread that made it. */
    public Subscription onChange(Runnable listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** A new id: later ones sort after earlier ones. */
    public static String newId() {
        return Ids.next();
    }

    private <T extends @Nullable Object> T changing(Function<Sql, Outcome<T>> work) {
        if (writer == null) {
            throw UserError.couldNot("The logbook " + file + " is open for reading only.", null);
        }
        Outcome<T> outcome = writer.transaction(work);
        if (outcome.changed()) {
            listeners.forEach(Runnable::run);
        }
        return outcome.value();
    }

    @Override
    public void close() {
        readers.close();
        if (writer != null) {
            writer.close();
        }
        if (lock != null) {
            lock.close();
        }
    }
}
