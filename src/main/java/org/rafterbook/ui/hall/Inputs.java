package org.rafterbook.ui.hall;

import java.util.function.Consumer;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.units.UserError;

/** Refusals of the logbook, beside the field they are about. */
final class Inputs {

    private Inputs() {}

    /** Shows the sentence of a refusal below the field. */
    static Consumer<Throwable> refusal(Field<?> field) {
        return failure -> field.refuse(
                failure instanceof UserError error ? error.sentence() : "This could not be kept: " + failure);
    }
}
