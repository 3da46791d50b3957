package org.rafterbook.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.shell.Shell;
import org.rafterbook.work.OpenedBook;

/** Says in the window's title and head which logbook is open, how far another is, and leads back to the flyer's own. */
final class LogbookHead {

    private final Shell shell;
    private final Consumer<String> title;
    private final Action another;
    private final Action mine;
    private final Action again;

    /**
     * @param title is told what the window is called
     * @param another opens another logbook
     * @param mine goes back to the flyer's own
     * @param again opens the other one that was open last; enabled where there is one
     */
    LogbookHead(Shell shell, Consumer<String> title, Action another, Action mine, Action again) {
        this.shell = shell;
        this.title = title;
        this.another = another;
        this.mine = mine;
        this.again = again;
    }

    /** Shows it; null where no logbook is open. */
    void show(@Nullable OpenedBook opened, @Nullable Node progress) {
        boolean away = opened != null && opened.kind() != OpenedBook.Kind.OWN;
        title.accept(opened == null ? "Rafterbook" : opened.name() + " – Rafterbook");
        mine.enabledProperty().set(away);
        List<Node> nodes = new ArrayList<>();
        if (progress != null) {
            nodes.add(progress);
        }
        if (opened != null) {
            nodes.add(new LogbookName(opened, another));
        }
        if (away) {
            nodes.add(Buttons.secondary(mine));
        } else if (opened != null && again.enabledProperty().get()) {
            nodes.add(Buttons.secondary(again));
        }
        shell.logbook(nodes);
    }
}
