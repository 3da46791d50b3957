package org.rafterbook.ui.bench;

import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;

/** Figures of the Bench in words. */
final class BenchWords {

    private BenchWords() {}

    /** A fraction as per cent with one decimal. */
    static String percent(@Nullable Double fraction) {
        return fraction == null ? QuantityFormat.UNKNOWN : QuantityFormat.rounded(fraction * 100, 1) + " %";
    }

    static @Nullable Double inPercent(@Nullable Double fraction) {
        return fraction == null ? null : (Double) (fraction * 100);
    }

    /** A difference of lengths with its sign, without its unit. */
    static String signedLength(QuantityFormat format, @Nullable Double metres) {
        String unit = " " + format.unitOf(Quantity.LENGTH);
        return format.difference(Quantity.LENGTH, metres).replace(unit, "");
    }

    static String grams(@Nullable Double kg) {
        return kg == null ? QuantityFormat.UNKNOWN : QuantityFormat.rounded(kg * 1000, 2) + " g";
    }

    static String degrees(@Nullable Double rad, int decimals) {
        return rad == null ? QuantityFormat.UNKNOWN : QuantityFormat.rounded(Math.toDegrees(rad), decimals) + "°";
    }

    static String number(@Nullable Double value, int decimals) {
        return value == null || !Double.isFinite(value)
                ? QuantityFormat.UNKNOWN
                : QuantityFormat.rounded(value, decimals);
    }

    /** A difference with its sign. */
    static String signed(@Nullable Double value, int decimals) {
        String text = number(value, decimals);
        return value != null && value > 0 && !text.equals(QuantityFormat.UNKNOWN) ? "+" + text : text;
    }
}
