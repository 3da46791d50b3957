package org.rafterbook.ui.shell;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** What the foot of the window says of keeping: when something was kept last, and what undo would undo. */
public final class Kept {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");
    private final ReadOnlyStringWrapper undoes = new ReadOnlyStringWrapper(this, "undoes", "");
    private Runnable undo = () -> {};

    /** Something is on disk since this time of day. */
    public void kept(LocalTime at) {
        say("kept " + CLOCK.format(at));
    }

    /** Any other sentence behind the tick, such as "logbook made in Documents". */
    public void say(String sentence) {
        says.set(sentence);
    }

    /** What Ctrl+Z would undo now, in a few words; empty for nothing. */
    public void undoable(String what, Runnable how) {
        undoes.set(what);
        undo = how;
    }

    /** Undoes it if there is anything to undo. */
    public void undo() {
        if (!undoes.get().isEmpty()) {
            undo.run();
        }
    }

    public ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty undoesProperty() {
        return undoes.getReadOnlyProperty();
    }
}
