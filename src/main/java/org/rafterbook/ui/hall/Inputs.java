package org.rafterbook.ui.hall;

import java.util.function.Consumer;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.UserError;

/** Fields of the Hall for quantities in the flyer's units. */
final class Inputs {

    private Inputs() {}

    static Field<TypedValue> quantity(String label, Quantity quantity, DisplayUnits units) {
        QuantityParser parser = QuantityParser.typed(quantity, units);
        Field<TypedValue> field = Field.number(label, parser::read);
        return field.unit(quantity.unit(units).symbol()).also(TypedValue::readBack);
    }

    static Field<TypedRange> range(String label, Quantity quantity, DisplayUnits units) {
        QuantityParser parser = QuantityParser.typed(quantity, units);
        Field<TypedRange> field = Field.number(label, parser::readRange);
        return field.unit(quantity.unit(units).symbol()).also(TypedRange::readBack);
    }

    /** Shows the sentence of a refusal below the field. */
    static Consumer<Throwable> refusal(Field<?> field) {
        return failure -> field.refuse(
                failure instanceof UserError error ? error.sentence() : "This could not be kept: " + failure);
    }
}
