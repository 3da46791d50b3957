package org.rafterbook.logbook;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

/** Where the SQLite driver unpacks its library: the program's own folder, since a machine may forbid to run what lies in /tmp. */
final class DriverFolder {

    private static final String PROPERTY = "org.sqlite.tmpdir";
    private static final Duration A_WHILE = Duration.ofDays(1);

    private DriverFolder() {}

    /** Tells the driver, unless somebody already has. */
    static void use() {
        if (System.getProperty(PROPERTY) != null) {
            return;
        }
        try {
            Path own = Files.createDirectories(own());
            System.setProperty(PROPERTY, own.toString());
            tidy(own, Instant.now().minus(A_WHILE));
        } catch (IOException e) {
            // A home that cannot be written to: the machine's own folder has to do.
            System.setProperty(PROPERTY, System.getProperty("java.io.tmpdir"));
        }
    }

    /** Removes what killed programs left behind. What is old enough has long been loaded, or belongs to nobody. */
    static void tidy(Path folder, Instant before) throws IOException {
        try (DirectoryStream<Path> unpacked = Files.newDirectoryStream(folder, "sqlite-*")) {
            for (Path each : unpacked) {
                if (Files.getLastModifiedTime(each).toInstant().isBefore(before)) {
                    remove(each);
                }
            }
        }
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // Still loaded by a program on a system that keeps such files: another time.
        }
    }

    private static Path own() {
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        Path home = Path.of(System.getProperty("user.home"));
        if (system.contains("win")) {
            return folder("LOCALAPPDATA", home.resolve("AppData").resolve("Local"))
                    .resolve("Rafterbook");
        }
        if (system.contains("mac")) {
            return home.resolve("Library").resolve("Caches").resolve("Rafterbook");
        }
        return folder("XDG_CACHE_HOME", home.resolve(".cache")).resolve("rafterbook");
    }

    private static Path folder(String variable, Path otherwise) {
        String named = System.getenv(variable);
        return named == null || named.isBlank() ? otherwise : Path.of(named);
    }
}
