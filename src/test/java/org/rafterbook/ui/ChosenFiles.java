package org.rafterbook.ui;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.rafterbook.ui.shell.Dialogs;

/** Dialogs answered beforehand: each question takes the next answer, none left means cancelled. */
public final class ChosenFiles implements Dialogs {

    private final Deque<List<Path>> answers = new ArrayDeque<>();

    /** What the flyer will choose next. */
    public ChosenFiles then(Path... files) {
        answers.add(List.of(files));
        return this;
    }

    private List<Path> next() {
        return answers.isEmpty() ? List.of() : answers.remove();
    }

    private Optional<Path> one() {
        return next().stream().findFirst();
    }

    @Override
    public Optional<Path> open(String title, FileKind... kinds) {
        return one();
    }

    @Override
    public List<Path> openSeveral(String title, FileKind... kinds) {
        return next();
    }

    @Override
    public Optional<Path> save(String title, String suggestedName, FileKind kind) {
        return one();
    }

    @Override
    public Optional<Path> folder(String title) {
        return one();
    }

    @Override
    public boolean mayOverwrite(Path existing) {
        return true;
    }
}
