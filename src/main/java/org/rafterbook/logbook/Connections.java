package org.rafterbook.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Locale;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteOpenMode;

/** Opens connections to a logbook's file, each set up for its job. */
final class Connections {

    private static final int BUSY_MILLIS = 5_000;
    private static final String TEMP = "org.sqlite.tmpdir";

    private Connections() {}

    /** Every commit is on disk when it returns. */
    static Sql writer(Path file) {
        SQLiteConfig config = config();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        return open(config, url(file));
    }

    /** Opened to write, so that the last one to close can tidy up the write-ahead log; writes are refused all the same. */
    static Sql reader(Path file) {
        Sql sql = open(config(), url(file));
        sql.execute("PRAGMA query_only = ON");
        return sql;
    }

    /** Never writes to the file or beside it, and sees only what has left the write-ahead log. */
    static Sql untouching(Path file) {
        SQLiteConfig config = config();
        config.resetOpenMode(SQLiteOpenMode.CREATE);
        config.setReadOnly(true);
        return open(config, url(file) + "?immutable=1");
    }

    /**
     * For changing tables: with foreign keys on, rebuilding a parent's table would silently delete its children. The
     * journal is the classical one, so that the file is whole by itself when the last connection closes.
     */
    static SQLiteDataSource migrating(Path file) {
        SQLiteConfig config = config();
        config.setJournalMode(SQLiteConfig.JournalMode.DELETE);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(false);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl(url(file));
        return source;
    }

    private static SQLiteConfig config() {
        useOwnFolder();
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(BUSY_MILLIS);
        return config;
    }

    private static Sql open(SQLiteConfig config, String url) {
        try {
            return new Sql(config.createConnection(url));
        } catch (SQLException e) {
            throw Failures.of(e);
        }
    }

    /** As a URI, so that no character of a file's name means anything to the driver. */
    private static String url(Path file) {
        return "jdbc:sqlite:file:" + file.toUri().getRawPath();
    }

    /** The driver unpacks its library into the program's own folder: the machine's may forbid to run what lies there. */
    private static void useOwnFolder() {
        if (System.getProperty(TEMP) != null) {
            return;
        }
        try {
            System.setProperty(TEMP, Files.createDirectories(ownFolder()).toString());
        } catch (IOException e) {
            System.setProperty(TEMP, System.getProperty("java.io.tmpdir"));
        }
    }

    private static Path ownFolder() {
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        Path home = Path.of(System.getProperty("user.home"));
        if (system.contains("win")) {
            String local = System.getenv("LOCALAPPDATA");
            return (local == null ? home.resolve("AppData").resolve("Local") : Path.of(local)).resolve("Rafterbook");
        }
        if (system.contains("mac")) {
            return home.resolve("Library").resolve("Caches").resolve("Rafterbook");
        }
        String cache = System.getenv("XDG_CACHE_HOME");
        return (cache == null || cache.isBlank() ? home.resolve(".cache") : Path.of(cache)).resolve("rafterbook");
    }
}
