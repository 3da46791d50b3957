package org.rafterbook.logbook;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteOpenMode;

/** Opens connections to a logbook's file, each set up for its job. */
final class Connections {

    private static final int BUSY_MILLIS = 5_000;

    private Connections() {}

    /** Every commit is on disk when it returns. The file must be there. */
    static Sql writer(Path file) {
        SQLiteConfig config = durable();
        config.resetOpenMode(SQLiteOpenMode.CREATE);
        config.enforceForeignKeys(true);
        return open(config, url(file));
    }

    /** Opened to write, so that the last one to close can tidy up the write-ahead log; writes are refused all the same. */
    static Sql reader(Path file) {
        SQLiteConfig config = config();
        config.resetOpenMode(SQLiteOpenMode.CREATE);
        Sql sql = open(config, url(file));
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

    /** For changing tables: with foreign keys on, rebuilding a parent's table would silently delete its children. */
    static SQLiteDataSource migrating(Path file) {
        SQLiteConfig config = durable();
        config.enforceForeignKeys(false);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl(url(file));
        return source;
    }

    private static SQLiteConfig durable() {
        SQLiteConfig config = config();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        return config;
    }

    private static SQLiteConfig config() {
        DriverFolder.use();
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
}
