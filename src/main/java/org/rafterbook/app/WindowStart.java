package org.rafterbook.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.rafterbook.logbook.Mode;
import org.rafterbook.ui.Window;
import org.rafterbook.work.Book;
import org.rafterbook.work.LastLogbook;
import org.rafterbook.work.ReviewText;
import org.rafterbook.work.Shelf;

/** Opens the window on the default logbook; without a display it prints the review as text. */
final class WindowStart {

    /** Kept, since the logging library forgets loggers nobody holds. */
    private static final Logger JAVAFX = Logger.getLogger("javafx");

    private WindowStart() {}

    /** Runs until the window is closed; the exit code. */
    static int run() {
        JAVAFX.setLevel(Level.SEVERE);
        if (!Window.start()) {
            return asText();
        }
        try {
            Window.untilClosed(new Shelf(
                    LogbookPlace.file(), Clock.systemDefaultZone(), new LastLogbook(LogbookPlace.noteOfTheLast())));
            return 0;
        } finally {
            Window.end();
        }
    }

    private static int asText() {
        System.out.println("There is no display here, so the review is printed instead of a window.");
        Path file = LogbookPlace.file();
        boolean own = Files.exists(file);
        System.out.println(
                own ? "Logbook " + file : "There is no logbook yet at " + file + "; this is the demo season.");
        try (Book book = own ? Book.open(file, Mode.READ_ONLY, Clock.systemDefaultZone()) : LogbookChoice.demo()) {
            System.out.println(ReviewText.of(ReviewCommand.answers(book, null)));
        }
        return 0;
    }
}
