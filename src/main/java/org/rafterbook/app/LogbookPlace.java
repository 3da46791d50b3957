package org.rafterbook.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the default logbook lies: in the user's documents folder. */
final class LogbookPlace {

    private LogbookPlace() {}

    /** The default logbook; its folder may not be there yet. */
    static Path file() {
        return documents().resolve("Rafterbook").resolve("flights.rafterbook");
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
