package org.rafterbook.airframe;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/**
 * What one setting stands at: a number in SI or a word, never both.
 *
 * @param asTyped what the flyer typed, null where it was computed or imported as it stands
 */
public record Setting(
        @Nullable Double number,
        @Nullable String word,
        @Nullable String asTyped) {

    public Setting {
        if ((number == null) == (word == null)) {
            throw new IllegalArgumentException("a setting is a number or a word");
        }
    }

    public static Setting of(double number) {
        return new Setting(number, null, null);
    }

    public static Setting of(String word) {
        return new Setting(null, word, null);
    }

    /** True where both stand for the same value of a setting with this tolerance (half of it either way). */
    public boolean same(Setting other, double tolerance) {
        if (number != null && other.number != null) {
            double apart = Math.abs(number - other.number);
            return apart <= tolerance / 2 + 1e-9 * Math.max(Math.abs(number), 1e-3);
        }
        return word != null && word.equals(other.word);
    }

    /** The value for a digest: numbers to nine significant digits, so that arithmetic noise makes no new version. */
    String canonical() {
        if (number == null) {
            return "w:" + word;
        }
        return number == 0
                ? "n:0"
                : "n:"
                        + new BigDecimal(number)
                                .round(new MathContext(9))
                                .stripTrailingZeros()
                                .toString();
    }
}
