package org.rafterbook.logbook;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.function.Supplier;
import org.rafterbook.units.UserError;

/** Copies a logbook as it is at one moment, also while it is written. */
final class Backup {

    private Backup() {}

    /** A free name beside the file: {@code season.rafterbook} gives {@code season, edition 1.rafterbook}. */
    static Path beside(Path file, String what) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.') < 1 ? name.length() : name.lastIndexOf('.');
        Path free = file.resolveSibling(name.substring(0, dot) + ", " + what + name.substring(dot));
        for (int i = 2; Files.exists(free); i++) {
            free = file.resolveSibling(name.substring(0, dot) + ", " + what + " (" + i + ")" + name.substring(dot));
        }
        return free;
    }

    /** Writes the copy under another name first, so that a copy of its own name is always whole. */
    static void copy(Supplier<Sql> connection, Path to) {
        if (Files.exists(to)) {
            throw UserError.badInput("There is already a file " + to + "; a backup overwrites nothing.");
        }
        Path folder = to.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw UserError.badInput("There is no folder " + folder + ".");
        }
        Path part = to.resolveSibling(to.getFileName() + ".part");
        try {
            Files.deleteIfExists(part);
            try (Sql sql = connection.get()) {
                sql.execute("PRAGMA query_only = OFF");
                sql.run("VACUUM INTO ?", part.toString());
            }
            try (FileChannel written = FileChannel.open(part, StandardOpenOption.WRITE)) {
                written.force(true);
            }
            Files.move(part, to);
        } catch (IOException | UserError e) {
            throw failed(part, to, e);
        }
    }

    private static UserError failed(Path part, Path to, Exception cause) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
        String why = cause instanceof UserError error ? error.sentence() : "Its folder cannot be written to.";
        return UserError.couldNot("The backup " + to + " could not be written. " + why, cause);
    }
}
