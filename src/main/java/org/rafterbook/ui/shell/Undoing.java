package org.rafterbook.ui.shell;

import java.time.LocalTime;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.work.Book;

/**
 * The one owner of undo in a window: after each entry of its logbook it tells the foot when it was kept and what undo
 * would take back, and on Ctrl+Z takes it back after all entries still on their way and says what it was.
 */
public final class Undoing {

    private final Book book;
    private final FxBackground background;
    private final Kept kept;

    private Undoing(Tools tools, Book book) {
        this.book = book;
        this.background = tools.background();
        this.kept = tools.kept();
    }

    /** Follows the logbook until the subscription is cancelled. */
    public static Subscription of(Tools tools, Book book) {
        Undoing undoing = new Undoing(tools, book);
        Subscription following = book.onChange(undoing::changed);
        undoing.background.call(progress -> words(book.undoable())).then(undoing::offer);
        return following;
    }

    /** On the thread that made the entry. */
    private void changed() {
        String next = words(book.undoable());
        background.later(() -> {
            kept.kept(LocalTime.now());
            offer(next);
        });
    }

    private void offer(String next) {
        kept.undoable(next, this::undo);
    }

    private void undo() {
        background.call(progress -> book.undo()).entry().then(undone -> kept.say("undone: " + undone.why()));
    }

    private static String words(@Nullable String what) {
        return what == null ? "" : what;
    }
}
