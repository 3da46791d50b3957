package org.rafterbook.logbook;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A logbook: one SQLite file. Safe for use by any number of threads. */
public final class Logbook implements AutoCloseable {

    private record Outcome<T>(T value, boolean changed) {}

    private static final Logger LOG = LoggerFactory.getLogger(Logbook.class);

    private final Path file;
    private final @Nullable WindowLock lock;
    private final @Nullable WriterThread writer;
    private final ReaderPool readers;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final AtomicBoolean closed = new AtomicBoolean();

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
        if (mode == Mode.CREATE) {
            LogbookFile.makeFolder(given);
        }
        LogbookFile file = LogbookFile.at(given, migrations);
        if (mode != Mode.CREATE && !file.exists()) {
            throw file.absent();
        }
        return mode == Mode.READ_ONLY
                ? new Logbook(file.path(), null, null, new ReaderPool(file.readers()))
                : toWrite(file);
    }

    private static Logbook toWrite(LogbookFile file) {
        WindowLock lock = WindowLock.take(file.path());
        try {
            if (!file.exists()) {
                file.make();
            }
            WriterThread writer = new WriterThread(file.writer());
            return new Logbook(file.path(), lock, writer, new ReaderPool(() -> Connections.reader(file.path())));
        } catch (RuntimeException e) {
            lock.close();
            throw e;
        }
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
    public <T> T enter(String why, Entry<T> entry) {
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

    /** Makes one entry that has no answer. */
    public void change(String why, Change change) {
        Entry<Boolean> entry = rows -> {
            change.make(rows);
            return true;
        };
        enter(why, entry);
    }

    /** Keeps a preference; no listener is called, since nothing of the flying has changed. */
    public void prefer(String name, String value) {
        changing(sql -> {
            RowWriter rows = new RowWriter(sql, new ChangeLog(sql, "preference " + name, null));
            rows.preference(name, value);
            rows.end();
            return new Outcome<>(value, false);
        });
    }

    /** Asks a question on the caller's thread. */
    public <T> T read(Query<T> query) {
        return asking(query::ask);
    }

    /** Asks a question that may have no answer. */
    public <T> @Nullable T find(Lookup<T> lookup) {
        return asking(lookup::ask);
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

    /**
     * Takes all of another logbook in as one entry, which undo takes back; what is here already is not added again.
     *
     * @return how many rows were added, by the words for one of them; empty where there was nothing new
     * @throws UserError where the two contradict each other: nothing is taken in then
     */
    public Map<String, Integer> join(Logbook other) {
        Map<String, List<Map<String, @Nullable Object>>> rows = other.readers.snapshot(Joining::rows);
        return changing(sql -> {
            ChangeLog log = new ChangeLog(sql, "joining of " + other.file.getFileName(), null);
            RowWriter writing = new RowWriter(sql, log);
            try {
                return new Outcome<>(Joining.take(writing, rows), !log.isEmpty());
            } finally {
                writing.end();
            }
        });
    }

    /** Has the listener called after each change, on the thread that made it. */
    public Subscription onChange(Runnable listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /**
     * Keeps what was computed (JSON), in the place of what older versions of the engine computed from this input. Where
     * that cannot be done it will be computed again.
     */
    public void keepComputed(String kind, String digest, String engine, String json) {
        if (writer != null) {
            try {
                writer.entry(sql -> Computed.keep(sql, kind, digest, engine, json));
            } catch (UserError e) {
                LOG.warn("What was computed is not kept.", e);
            }
        }
    }

    /** Looks for damage and contradictions, each a sentence; empty when the logbook is sound. */
    public List<String> check() {
        try (Sql sql = readers.open()) {
            return SoundnessCheck.run(sql);
        }
    }

    /** Writes a copy as of this moment; a UserError where there is such a file already. */
    public void backup(Path to) {
        Backup.copy(readers::open, to.toAbsolutePath());
    }

    /** A new id: later ones sort after earlier ones. */
    public static String newId() {
        return Ids.next();
    }

    private <T extends @Nullable Object> T asking(Function<Reader, T> question) {
        return readers.snapshot(sql -> {
            RowReader rows = new RowReader(sql);
            try {
                return question.apply(rows);
            } finally {
                rows.end();
            }
        });
    }

    private <T> T changing(Function<Sql, Outcome<T>> work) {
        if (writer == null) {
            throw UserError.couldNot("The logbook " + file + " is open for reading only.", null);
        }
        Outcome<T> outcome = writer.entry(work);
        if (outcome.changed()) {
            listeners.forEach(Logbook::call);
        }
        return outcome.value();
    }

    /** The entry is kept by now, which a listener's failure must not make look otherwise. */
    private static void call(Runnable listener) {
        try {
            listener.run();
        } catch (RuntimeException e) {
            LOG.error("A listener to changes of the logbook failed.", e);
        }
    }

    @Override
    public void close() {
        if (closed.getAndSet(true)) {
            return;
        }
        readers.close();
        if (writer != null) {
            writer.close();
        }
        if (lock != null) {
            lock.close();
        }
    }
}
