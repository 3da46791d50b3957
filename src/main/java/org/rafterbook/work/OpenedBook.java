package org.rafterbook.work;

import java.nio.file.Path;

/**
 * A logbook as it was opened for a window.
 *
 * @param made true where its file was made just now
 * @param empty true where nothing was ever entered, or all of it was undone
 */
public record OpenedBook(Book book, Kind kind, boolean made, boolean empty, ScreenChoices choices) {

    private static final String ENDING = ".rafterbook";

    /** Whose logbook it is. */
    public enum Kind {
        /** The one a start opens. */
        OWN,
        /** The demo season's. */
        DEMO,
        /** Any other file. */
        OTHER
    }

    static OpenedBook of(Book book, Kind kind, boolean made) {
        return new OpenedBook(book, kind, made, book.isEmpty(), ScreenChoices.of(book));
    }

    /** What the window calls it: its file's name without the ending. */
    public String name() {
        return name(book.file());
    }

    /** What a window calls a logbook: its file's name without the ending. */
    public static String name(Path logbook) {
        String file = String.valueOf(logbook.getFileName());
        return file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file;
    }

    /** The folder it lies in, by its last two names. */
    public String folder() {
        Path folder = book.file().toAbsolutePath().getParent();
        int names = folder == null ? 0 : folder.getNameCount();
        return names == 0 || folder == null
                ? String.valueOf(folder)
                : folder.subpath(Math.max(0, names - 2), names).toString();
    }
}
