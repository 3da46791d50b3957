package org.rafterbook.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.rafterbook.ui.shell.Dialogs;

/** Dialogs nobody answers: every question is cancelled. */
public final class NoDialogs implements Dialogs {

    @Override
    public Optional<Path> open(String title, FileKind... kinds) {
        return Optional.empty();
    }

    @Override
    public List<Path> openSeveral(String title, FileKind... kinds) {
        return List.of();
    }

    @Override
    public Optional<Path> save(String title, String suggestedName, FileKind kind) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> folder(String title) {
        return Optional.empty();
    }

    @Override
    public boolean mayOverwrite(Path existing) {
        return false;
    }
}
