package org.rafterbook.ui.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The only windows that ever open over the window: choosing files, and asking before one is overwritten. */
public interface Dialogs {

    /** What the files are, such as "Table (CSV)" with "*.csv". */
    record FileKind(String name, List<String> patterns) {}

    /** A file to read. */
    Optional<Path> open(String title, FileKind... kinds);

    /** Several files to read. */
    List<Path> openSeveral(String title, FileKind... kinds);

    /** A file to write; overwriting one was asked about. */
    Optional<Path> save(String title, String suggestedName, FileKind kind);

    /** A folder. */
    Optional<Path> folder(String title);

    /** Whether what is there may be overwritten. */
    boolean mayOverwrite(Path existing);
}
