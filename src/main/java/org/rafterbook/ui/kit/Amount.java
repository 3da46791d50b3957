package org.rafterbook.ui.kit;

import org.jspecify.annotations.Nullable;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.Unit;

/**
 * A field for a quantity that is recorded already or proposed: filled with what stands, and as long as nobody types in it,
 * it gives back exactly that and not the digits shown.
 */
public final class Amount {

    private static final int MOST_DECIMALS = 5;

    private final Field<TypedValue> field;
    private final Quantity quantity;
    private final DisplayUnits units;
    private int decimals = MOST_DECIMALS;
    private @Nullable Double stood;
    private String filled = "";

    public Amount(String label, Quantity quantity, DisplayUnits units) {
        this.quantity = quantity;
        this.units = units;
        field = Field.quantity(label, quantity, units);
    }

    /** Shows no more than so many decimals of what the field is filled with. */
    public Amount decimals(int most) {
        decimals = most;
        return this;
    }

    /** Fills the field with a recorded value, SI; null empties it. */
    public Amount fill(@Nullable Double si) {
        stood = si;
        Unit unit = quantity.unit(units);
        String text = si == null ? "" : SettingWords.inUnit(rounded(si, unit), unit);
        String symbol = unit.symbol();
        filled = text.endsWith(symbol)
                ? text.substring(0, text.length() - symbol.length()).strip()
                : text;
        field.fill(filled);
        return this;
    }

    private double rounded(double si, Unit unit) {
        double scale = Math.pow(10, decimals);
        return unit.toSi(Math.rint(unit.fromSi(si) * scale) / scale + 0.0); // no zero below zero
    }

    /** What stands or was typed, SI; null while the field is empty or cannot be read. */
    public @Nullable Double si() {
        TypedValue typed = field.value();
        return field.typed().equals(filled) ? stood : typed == null ? null : (Double) typed.si();
    }

    /** What stands or was typed, or another value where there is neither. */
    public double si(double otherwise) {
        Double si = si();
        return si == null ? otherwise : si;
    }

    /** The field, to be laid out and refused in. */
    public Field<TypedValue> field() {
        return field;
    }
}
