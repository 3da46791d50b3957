package org.rafterbook.work;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Mode;

/**
 * The logbooks a window can open: the flyer's own, the demo season's beside it, and any other file. Whatever is in the
 * way is a {@link org.rafterbook.units.UserError} with a sentence, and the file is as it was.
 */
public final class Shelf {

    /** The invented flyer of the demo season. */
    private static final String DEMO_FLYER = "R. Aldous";

    private static final String DEMO_FILE = "demo-season.rafterbook";

    private final Path own;
    private final Clock clock;
    private final @Nullable LastLogbook last;

    /** A shelf that remembers no other logbook, see below. */
    public Shelf(Path own, Clock clock) {
        this(own, clock, null);
    }

    /**
     * @param own the logbook a start opens; it and its folder may not be there yet
     * @param last remembers which other logbook was open last; null for nobody
     */
    public Shelf(Path own, Clock clock, @Nullable LastLogbook last) {
        this.own = own;
        this.clock = clock;
        this.last = last;
    }

    /** The logbook, neither the flyer's own nor the demo's, that was open last; empty where there is none by now. */
    public Optional<Path> lastOther() {
        return last == null ? Optional.empty() : last.find().filter(file -> kind(file) == OpenedBook.Kind.OTHER);
    }

    private OpenedBook noted(OpenedBook opened) {
        if (last != null && opened.kind() == OpenedBook.Kind.OTHER) {
            last.note(opened.book().file());
        }
        return opened;
    }

    /** Where the flyer's own logbook lies, or will. */
    public Path own() {
        return own;
    }

    public boolean ownIsThere() {
        return Files.exists(own);
    }

    public Clock clock() {
        return clock;
    }

    /** Opens the flyer's own logbook; makes it where it is not there. */
    public OpenedBook openOwn() {
        return make(own);
    }

    /** Opens a logbook that is there. */
    public OpenedBook open(Path file) {
        return noted(OpenedBook.of(Book.open(file, Mode.EXISTING, clock), kind(file), false));
    }

    /** Opens a logbook; makes it where it is not there. */
    public OpenedBook make(Path file) {
        boolean made = !Files.exists(file);
        return noted(OpenedBook.of(Book.open(file, Mode.CREATE, clock), kind(file), made));
    }

    /** Opens the demo season in its own logbook; takes the season in where that is empty. */
    public OpenedBook openDemo(Progress progress) {
        Path file = demo();
        boolean made = !Files.exists(file);
        Book book = Book.open(file, Mode.CREATE, clock);
        try {
            if (book.isEmpty()) {
                DemoFiles.into(book, progress);
                ScreenChoices.keep(book, ScreenChoices.Name.FLYER, DEMO_FLYER);
            }
            return OpenedBook.of(book, OpenedBook.Kind.DEMO, made);
        } catch (RuntimeException e) {
            book.close();
            throw e;
        }
    }

    private Path demo() {
        return own.resolveSibling(DEMO_FILE);
    }

    private OpenedBook.Kind kind(Path file) {
        Path path = file.toAbsolutePath().normalize();
        return path.equals(own.toAbsolutePath().normalize())
                ? OpenedBook.Kind.OWN
                : path.equals(demo().toAbsolutePath().normalize()) ? OpenedBook.Kind.DEMO : OpenedBook.Kind.OTHER;
    }
}
