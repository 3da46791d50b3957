package org.rafterbook.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
            return new LogbookFile(Files.exists(path) ? path.toRealPath() : path, migrations);
        } catch (IOException e) {
            throw UserError.couldNot("The file " + file + " cannot be reached.", e);
        }
    }

    Path path() {
        return path;
    }

    void mustExist() {
        if (!Files.exists(path)) {
            throw UserError.badInput("There is no logbook " + path + ".");
        }
    }

    void makeFolder() {
        Path folder = path.getParent();
        try {
            if (folder != null) {
                Files.createDirectories(folder);
            }
        } catch (IOException e) {
            throw UserError.couldNot("The folder " + folder + " cannot be made.", e);
        }
    }

    /** Makes the file under another name first, so that a logbook is never there in part. */
    void makeIfAbsent() {
        if (Files.exists(path)) {
            return;
        }
        Path part = path.resolveSibling(path.getFileName() + ".part");
        try {
            Files.deleteIfExists(part);
            migrations.make(part);
            Files.move(part, path);
        } catch (IOException | RuntimeException e) {
            throw UserError.couldNot("The logbook " + path + " could not be made.", e);
        }
    }

    /** The file's edition; a UserError for a file that is no logbook of this program's, or of a newer one. */
    int edition() {
        if (!Files.isRegularFile(path)) {
            throw UserError.badInput(path + " is not a file.");
        }
        int edition = read("PRAGMA user_version");
        if (read("PRAGMA application_id") != Migrations.APPLICATION_ID) {
            throw UserError.badInput(path + " is not a Rafterbook logbook. Nothing in it was touched.");
        }
        if (edition > migrations.edition()) {
            throw UserError.badInput(newer(edition));
        }
        return edition;
    }

    private String newer(int edition) {
        return "The logbook " + path + " was written by a newer Rafterbook (edition " + edition
                + ", this program knows up to " + migrations.edition()
                + "). Open it with that one; nothing in it was touched.";
    }

    private int read(String pragma) {
        try (Sql sql = Connections.untouching(path)) {
            return (int) sql.number(pragma);
        } catch (UserError e) {
            if (Failures.code(e) == SQLiteErrorCode.SQLITE_NOTADB) {
                throw UserError.badInput(path + " is not a Rafterbook logbook. Nothing in it was touched.");
            }
            throw e;
        }
    }
}
