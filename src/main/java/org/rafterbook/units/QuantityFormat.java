package org.rafterbook.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Shows values of every quantity in the flyer's units: unit after a space, U+2212 as minus, a fixed number of decimals,
 * times as {@code m:ss}, and {@value #UNKNOWN} for what is not known.
 */
public final class QuantityFormat {

    /** Stands for a value that is not known. */
    public static final String UNKNOWN = "–";

    private static final MathContext SENSIBLE = new MathContext(5);

    private final DisplayUnits units;

    public QuantityFormat(DisplayUnits units) {
        this.units = units;
    }

    public DisplayUnits units() {
        return units;
    }

    /** Value and unit: "5.1 %"; for times {@code m:ss}. */
    public String text(Quantity quantity, @Nullable Double si) {
        return text(quantity, si, decimals(quantity));
    }

    /** Value and unit with a chosen number of decimals. */
    public String text(Quantity quantity, @Nullable Double si, int decimals) {
        return si == null || isUnknown(si) ? UNKNOWN : join(number(quantity, si, decimals), unitOf(quantity));
    }

    /** Value and unit with as many decimals as it has, but no more than given: "0.9 g", "1.3996 g". */
    public String shortest(Quantity quantity, @Nullable Double si, int mostDecimals) {
        if (si == null || isUnknown(si)) {
            return UNKNOWN;
        }
        if (quantity == Quantity.TIME) {
            return text(quantity, si);
        }
        BigDecimal rounded =
                BigDecimal.valueOf(quantity.unit(units).fromSi(si)).setScale(mostDecimals, RoundingMode.HALF_UP);
        return join(signed(MachineNumber.text(rounded.doubleValue())), unitOf(quantity));
    }

    /** Value and unit, or the given word where the value is not known. */
    public String textOr(String word, Quantity quantity, @Nullable Double si) {
        return si == null || isUnknown(si) ? word : text(quantity, si);
    }

    /** The number alone, for a table whose head names the unit. */
    public String number(Quantity quantity, @Nullable Double si) {
        return number(quantity, si, decimals(quantity));
    }

    /** The number alone with a chosen number of decimals. */
    public String number(Quantity quantity, @Nullable Double si, int decimals) {
        if (si == null || isUnknown(si)) {
            return UNKNOWN;
        }
        if (quantity == Quantity.TIME) {
            return ClockTime.minutesSeconds(si);
        }
        return rounded(quantity.unit(units).fromSi(si), decimals);
    }

    /** A difference with its sign: "+1.5 mm", "−0:20". */
    public String difference(Quantity quantity, @Nullable Double si) {
        if (si == null || isUnknown(si)) {
            return UNKNOWN;
        }
        if (quantity == Quantity.TIME) {
            return ClockTime.difference(si);
        }
        String number = number(quantity, si);
        boolean zero = number.chars().noneMatch(c -> c >= '1' && c <= '9');
        return join(si > 0 && !zero ? "+" + number : number, unitOf(quantity));
    }

    /** A lower bound: "≥ 8:47", "≥ 7.9 m". */
    public String atLeast(Quantity quantity, @Nullable Double si) {
        return si == null || isUnknown(si) ? UNKNOWN : "≥ " + text(quantity, si);
    }

    /** A range: "7.9 to 9.4 m". */
    public String range(Quantity quantity, @Nullable Double lowSi, @Nullable Double highSi) {
        String low = number(quantity, lowSi);
        String high = text(quantity, highSi);
        return text(quantity, lowSi).equals(high) ? high : low + " to " + high;
    }

    /** An estimate with its uncertainty: "43.8 ± 1.9 mm"; an unknown uncertainty is said as such. */
    public String plusMinus(Quantity quantity, @Nullable Double si, @Nullable Double uncertaintySi) {
        return si == null || isUnknown(si) ? UNKNOWN : number(quantity, si) + " ± " + text(quantity, uncertaintySi);
    }

    /** The same value in the other system's unit, for below a field: "4.33 in"; empty where both use one unit. */
    public Optional<String> otherUnit(Quantity quantity, double si) {
        QuantityFormat other = new QuantityFormat(units.other());
        return quantity.unit(units) == quantity.unit(units.other())
                ? Optional.empty()
                : Optional.of(other.text(quantity, si));
    }

    /** The symbol that stands in a table's head or at a field's end. */
    public String unitOf(Quantity quantity) {
        return quantity == Quantity.TIME ? "" : quantity.unit(units).symbol();
    }

    /** A value in a given unit with the digits that were typed and no more: "2.75°". */
    public static String inUnit(double si, Unit unit) {
        return join(signed(MachineNumber.text(si, unit)), unit.symbol());
    }

    /** A plain number with U+2212 as minus and a fixed number of decimals. */
    public static String rounded(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return signed(rounded.toPlainString());
    }

    static String readBack(Quantity quantity, double si, Unit typed, Unit field) {
        if (quantity.dimension() == Dimension.TIME) {
            return ClockTime.full(si);
        }
        String asTyped = inUnit(si, typed);
        if (typed == field) {
            return asTyped;
        }
        BigDecimal converted = BigDecimal.valueOf(field.fromSi(si)).round(SENSIBLE);
        String plain =
                converted.signum() == 0 ? "0" : converted.stripTrailingZeros().toPlainString();
        return asTyped + " = " + join(signed(plain), field.symbol());
    }

    private int decimals(Quantity quantity) {
        return quantity.shown(units).decimals();
    }

    private static boolean isUnknown(double si) {
        return !Double.isFinite(si);
    }

    private static String signed(String plain) {
        return plain.replace('-', '−');
    }

    private static String join(String number, String symbol) {
        boolean close = symbol.isEmpty() || symbol.equals("°");
        return close ? number + symbol : number + " " + symbol;
    }
}
