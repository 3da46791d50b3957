package org.rafterbook.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Where the default logbook lies, in the user's documents folder, and what the program notes outside of logbooks. */
final class LogbookPlace {

    private LogbookPlace() {}

    /** The default logbook; its folder may not be there yet. */
    static Path file() {
        return documents().resolve("Rafterbook").resolve("flights.rafterbook");
    }

    /** The file that names the logbook opened last, in the folder in which this system keeps a user's settings. */
    static Path noteOfTheLast() {
        return settings().resolve("Rafterbook").resolve("last-logbook.txt");
    }

    private static Path settings() {
        Path home = Path.of(System.getProperty("user.home"));
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            return folder("APPDATA", home.resolve("AppData").resolve("Roaming"));
        }
        return system.startsWith("mac")
                ? home.resolve("Library").resolve("Application Support")
                : folder("XDG_CONFIG_HOME", home.resolve(".config"));
    }

    private static Path folder(String variable, Path usual) {
        String given = System.getenv(variable);
        return given == null || given.isBlank() ? usual : Path.of(given);
    }

    private static Path documents() {
        Path home = Path.of(System.getProperty("user.home"));
        Path xdg = home.resolve(".config").resolve("user-dirs.dirs");
        try {
            if (Files.isReadable(xdg)) {
                for (String line : Files.readAllLines(xdg)) {
                    if (line.startsWith("XDG_DOCUMENTS_DIR=")) {
                        String value = line.substring(line.indexOf('=') + 1).replace("\"", "");
                        return Path.of(value.replace("$HOME", home.toString()));
                    }
                }
            }
        } catch (IOException e) {
            // the list of folders is a convenience; without it the usual name serves
            return home.resolve("Documents");
        }
        return home.resolve("Documents");
    }
}
