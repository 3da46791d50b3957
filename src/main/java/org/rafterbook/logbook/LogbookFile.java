package org.rafterbook.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;
import org.sqlite.SQLiteErrorCode;

/** A file that is, or shall become, a logbook: looked at before anything is written. */
final class LogbookFile {

    private final Path path;
    private final Migrations migrations;

    private LogbookFile(Path path, Migrations migrations) {
        this.path = path;
        this.migrations = migrations;
    }

    static LogbookFile at(Path file, Migrations migrations) {
        try {
            Path path = file.toAbsolutePath().normalize();
            Path folder = path.getParent();
            if (Files.exists(path)) {
                path = path.toRealPath();
            } else if (folder != null && Files.exists(folder)) {
                path = folder.toRealPath().resolve(path.getFileName());
            }
            return new LogbookFile(path, migrations);
        } catch (IOException e) {
            throw UserError.couldNot("The file " + file + " cannot be reached.", e);
        }
    }

    static void makeFolder(Path file) {
        Path folder = file.toAbsolutePath().normalize().getParent();
        try {
            if (folder != null && !Files.isDirectory(folder)) {
                Files.createDirectories(folder);
            }
        } catch (IOException e) {
            throw UserError.couldNot("The folder " + folder + " cannot be made.", e);
        }
    }

    /** Its real path, so that one file has one name. */
    Path path() {
        return path;
    }

    boolean exists() {
        return Files.exists(path);
    }

    UserError absent() {
        return UserError.badInput("There is no logbook " + path + ".");
    }

    /** Makes the file under another name first, so that a logbook is never there in part. */
    void make() {
        Path part = path.resolveSibling(path.getFileName() + ".part");
        try {
            Files.deleteIfExists(part);
            migrations.make(part);
            Files.move(part, path);
        } catch (IOException | RuntimeException e) {
            throw UserError.couldNot("The logbook " + path + " could not be made: its folder cannot be written to.", e);
        }
    }

    /** The connection to write by, its tables at the newest edition. */
    Sql writer() {
        mustBeALogbook();
        if (!Files.isWritable(path)) {
            throw UserError.couldNot("The logbook " + path + " cannot be written to: the file is read-only.", null);
        }
        int edition = edition(() -> Connections.reader(path));
        if (edition < migrations.edition()) {
            migrations.bringUpToDate(path, edition);
        }
        Sql sql = named(() -> Connections.writer(path));
        try {
            // A file that cannot be written to would show only at the first entry.
            sql.entry(LogbookFile::mustBeComplete);
            return sql;
        } catch (UserError e) {
            sql.close();
            throw named(e);
        }
    }

    /** How to open connections to read by. */
    Supplier<Sql> readers() {
        mustBeALogbook();
        Supplier<Sql> readers = () -> named(this::reader);
        int edition = edition(readers);
        if (edition < migrations.edition()) {
            throw UserError.couldNot(
                    "The logbook " + path + " is of an older edition (" + edition
                            + "); open it once to write, which brings it" + " up to date and keeps a copy as it was.",
                    null);
        }
        return readers;
    }

    /** Where the folder is read-only SQLite can make no files beside the logbook; where the file is, it leaves them there. */
    private Sql reader() {
        Path folder = path.getParent();
        boolean writable = Files.isWritable(path) && folder != null && Files.isWritable(folder);
        return !writable && !hasUnsettledEntries() ? Connections.untouching(path) : Connections.reader(path);
    }

    private void mustBeALogbook() {
        if (!Files.isRegularFile(path)) {
            throw UserError.badInput(path + " is not a file.");
        }
        try (Sql sql = Connections.untouching(path)) {
            if (sql.number("PRAGMA application_id") != Migrations.APPLICATION_ID) {
                throw noLogbook(null);
            }
            mustBeKnown((int) sql.number("PRAGMA user_version"));
        } catch (UserError e) {
            SQLiteErrorCode code = Failures.code(e);
            if (code == SQLiteErrorCode.SQLITE_NOTADB) {
                throw noLogbook(e);
            }
            // The program may have been killed while entries went from the write-ahead log into the file: only both
            // together are whole then.
            if (code != SQLiteErrorCode.SQLITE_CORRUPT || !hasUnsettledEntries()) {
                throw named(e);
            }
        }
    }

    private int edition(Supplier<Sql> connection) {
        try (Sql sql = connection.get()) {
            if (sql.number("PRAGMA application_id") != Migrations.APPLICATION_ID) {
                throw noLogbook(null);
            }
            int edition = (int) sql.number("PRAGMA user_version");
            mustBeKnown(edition);
            return edition;
        } catch (UserError e) {
            throw named(e);
        }
    }

    private void mustBeKnown(int edition) {
        if (edition > migrations.edition()) {
            throw UserError.badInput("The logbook " + path + " was written by a newer Rafterbook (edition " + edition
                    + ", this program knows up to " + migrations.edition()
                    + "). Open it with that one; nothing in it was touched.");
        }
    }

    private static boolean mustBeComplete(Sql sql) {
        String names = Json.array(Tables.names());
        long there = sql.number(
                "SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name IN (SELECT value FROM json_each(?))",
                names);
        if (there < Tables.names().size()) {
            throw UserError.couldNot(Failures.DAMAGED, null);
        }
        // Meets no row, but only where a write is allowed: beginning an entry would not tell.
        sql.run("DELETE FROM preference WHERE id IS NULL");
        return true;
    }

    private boolean hasUnsettledEntries() {
        try {
            Path log = path.resolveSibling(path.getFileName() + "-wal");
            return Files.exists(log) && Files.size(log) > 0;
        } catch (IOException e) {
            return true;
        }
    }

    private UserError noLogbook(@Nullable Throwable cause) {
        return new UserError(
                UserError.Kind.BAD_INPUT, path + " is not a Rafterbook logbook. Nothing in it was touched.", cause);
    }

    private Sql named(Supplier<Sql> connection) {
        try {
            return connection.get();
        } catch (UserError e) {
            throw named(e);
        }
    }

    /** While opening, a failure says which file it is about. */
    private UserError named(UserError e) {
        return e.sentence().contains(path.toString())
                ? e
                : new UserError(e.kind(), path + ": " + e.sentence(), e.getCause());
    }
}
