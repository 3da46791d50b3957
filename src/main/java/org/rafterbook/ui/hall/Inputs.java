package org.rafterbook.ui.hall;

import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.units.UserError;

/** What the sheets of the Hall share: refusals beside their field, middles that roll. */
final class Inputs {

    private Inputs() {}

    /** Shows the sentence of a refusal below the field. */
    static Consumer<Throwable> refusal(Field<?> field) {
        return failure -> field.refuse(
                failure instanceof UserError error ? error.sentence() : "This could not be kept: " + failure);
    }

    /** Lets the middle of a sheet roll where the window is too low, so that the main action below it stays in sight. */
    static ScrollPane rolling(Node middle) {
        ScrollPane rolling = new ScrollPane(middle);
        rolling.setFitToWidth(true);
        rolling.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        rolling.setFocusTraversable(false);
        rolling.setMinSize(0, 0);
        return Lay.grow(rolling);
    }
}
