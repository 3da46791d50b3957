package org.rafterbook.review;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One value of one setting.
 *
 * @param key what tells it from the setting's other values; equal keys are the same value
 * @param value the value as a number, in the unit of its {@link SettingInfo}; null where it is a word
 * @param label the value as the flyer reads it, without unit
 */
public record Level(String key, @Nullable Double value, String label) {

    private static final Pattern PLAIN = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?");
    private static final char MINUS = '\u2212';

    /** A value that is a number, in the setting's own unit. */
    public static Level number(double value) {
        String text = value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
        return new Level(text, value, text.replace('-', MINUS));
    }

    /** A value that is a word; one that is written as a number is the same value however it is written, "5" or "5.0". */
    public static Level word(String word) {
        return new Level(PLAIN.matcher(word).matches() ? number(Double.parseDouble(word)).key : word, null, word);
    }

    /** The value as a number, also where a setting that holds words holds one that is written as a number. */
    public @Nullable Double asNumber() {
        return value != null ? value : PLAIN.matcher(label).matches() ? Double.valueOf(label) : null;
    }

    /** True where both name the same value, whatever their labels. */
    public boolean same(Level other) {
        return key.equals(other.key);
    }
}
