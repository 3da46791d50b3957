package org.rafterbook.units;

import java.math.BigDecimal;

/** Numbers for files: all their digits, a point, no exponent, no trailing zeros. */
public final class MachineNumber {

    private MachineNumber() {}

    /**
     * The shortest plain decimal that reads back as the same double.
     *
     * @throws IllegalArgumentException for NaN and infinities, which no file may hold
     */
    public static String text(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite number: " + value);
        }
        return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** An SI value in the unit of its column, see {@link Unit#fromSi}. */
    public static String text(double si, Unit unit) {
        return text(unit.fromSi(si));
    }
}
