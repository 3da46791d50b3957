package org.rafterbook.ui;

import java.nio.file.Path;
import javafx.scene.Parent;
import org.rafterbook.OneEvening;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.work.Book;
import org.rafterbook.work.OpenedBook;
import org.rafterbook.work.Shelf;

/** The whole window on a real logbook file, its work done on the spot; the stage is the test's. */
public final class ShownBook implements AutoCloseable {

    private final OpenedBook opened;
    private final OpenWindow window;

    /** Opens the logbook, or makes it, and composes the window on it. */
    public ShownBook(Tools tools, Path file) {
        Shelf shelf = new Shelf(file, OneEvening.CLOCK);
        opened = shelf.openOwn();
        window = new OpenWindow(
                shelf,
                tools,
                () -> FxBackground.onTheSpot(tools.errors()),
                title -> {},
                new Outset(new Outset.Own(opened), null));
    }

    public Book book() {
        return opened.book();
    }

    public Parent shell() {
        return window.shell();
    }

    @Override
    public void close() {
        window.close(() -> {});
    }
}
