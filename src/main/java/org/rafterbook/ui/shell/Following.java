package org.rafterbook.ui.shell;

import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.work.Book;

/** Reads a logbook when a place comes into sight and again after each entry, until it goes out of sight. */
public final class Following {

    private final Book book;
    private final FxBackground background;
    private final Runnable read;
    private @Nullable Subscription listening;

    /**
     * @param read starts to read; called on the JavaFX thread
     */
    public Following(Book book, FxBackground background, Runnable read) {
        this.book = book;
        this.background = background;
        this.read = read;
    }

    /** Comes into sight. */
    public void start() {
        stop();
        listening = book.onChange(() -> background.later(read));
        read.run();
    }

    /** Goes out of sight. */
    public void stop() {
        if (listening != null) {
            listening.cancel();
            listening = null;
        }
    }
}
