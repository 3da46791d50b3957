package org.rafterbook.ui.shell;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.look.Look;

/**
 * What the shell and every place are handed when they are made.
 *
 * @param showing the place on show; set it to go to another
 */
public record Tools(
        Errors errors,
        Look look,
        FxBackground background,
        Dialogs dialogs,
        Kept kept,
        ObjectProperty<PlaceId> showing) {

    public Tools(Errors errors, Look look, FxBackground background, Dialogs dialogs) {
        this(errors, look, background, dialogs, new Kept(), new SimpleObjectProperty<>(PlaceId.HALL));
    }

    /** The same tools with other background work, such as that of another logbook. */
    public Tools on(FxBackground other) {
        return new Tools(errors, look, other, dialogs, kept, showing);
    }

    /** An empty set of keys for a place or one of its states. */
    public Keys keys() {
        return new Keys(errors);
    }
}
