package org.rafterbook.app;

import java.nio.file.Path;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Book;
import picocli.CommandLine.Option;

/** Which logbook a command works on. */
final class LogbookChoice {

    @Option(names = "--logbook", paramLabel = "FILE", description = "The logbook file.")
    private @Nullable Path file;

    /** Opens the logbook named; reading works beside an open window. */
    Book open(Mode mode) {
        if (file == null) {
            throw UserError.badInput("Say which logbook: --logbook FILE.");
        }
        return Book.open(file, mode, Clock.systemUTC());
    }

    boolean named() {
        return file != null;
    }
}
