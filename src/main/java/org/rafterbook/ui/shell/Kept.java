package org.rafterbook.ui.shell;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * What the window knows of keeping: when something was kept last, what undo would undo, and the bar that offers undo
 * after something was taken away. Whoever writes to the logbook tells it after the commit.
 */
public final class Kept {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");
    private final ReadOnlyStringWrapper undoes = new ReadOnlyStringWrapper(this, "undoes", "");
    private final ReadOnlyStringWrapper takenAway = new ReadOnlyStringWrapper(this, "takenAway", "");
    private Runnable undo = () -> {};

    /** Something is on disk since this time of day; takes the undo bar away. */
    public void kept(LocalTime at) {
        say("kept " + CLOCK.format(at));
        takenAway.set("");
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

    /** Shows the bar "Flight 3 deleted." with Undo until the next change. */
    public void takenAway(String sentence) {
        takenAway.set(sentence);
    }

    /** Undoes it if there is anything to undo. */
    public void undo() {
        if (!undoes.get().isEmpty()) {
            takenAway.set("");
            undo.run();
        }
    }

    public ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty undoesProperty() {
        return undoes.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty takenAwayProperty() {
        return takenAway.getReadOnlyProperty();
    }
}
