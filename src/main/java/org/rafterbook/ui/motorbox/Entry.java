package org.rafterbook.ui.motorbox;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedValue;

/** A field for a stored quantity: what is not typed anew keeps its value to the last digit. */
final class Entry {

    private static final int DIGITS = 4;

    private final Quantity quantity;
    private final String component;
    private final QuantityFormat format;
    private final Field<TypedValue> field;
    private String filled = "";
    private @Nullable Double was;

    /**
     * @param component name of the record's component, under which what was typed is kept
     */
    Entry(String label, Quantity quantity, String component, DisplayUnits units) {
        this.quantity = quantity;
        this.component = component;
        this.format = new QuantityFormat(units);
        this.field = Field.quantity(label, quantity, units);
    }

    Field<TypedValue> field() {
        return field;
    }

    /** Shows a stored value; null for none. */
    void fill(@Nullable Double si) {
        was = si;
        filled = si == null ? "" : format.shortest(quantity, si, DIGITS);
        field.fill(filled);
    }

    /** Whether what is typed can be kept. */
    boolean check() {
        return field.check();
    }

    /** The value: the stored one where nothing else was typed. */
    @Nullable
    Double si() {
        TypedValue value = field.value();
        return field.typed().equals(filled) ? was : value == null ? null : Double.valueOf(value.si());
    }

    /** Puts what was typed beside the value, under the component's name. */
    void typed(Map<String, String> asTyped) {
        if (!field.typed().equals(filled)) {
            if (field.typed().isBlank()) {
                asTyped.remove(component);
            } else {
                asTyped.put(component, field.typed().strip());
            }
        }
    }
}
