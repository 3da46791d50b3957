package org.rafterbook.work;

import org.rafterbook.units.QuantityFormat;

/** How far a margin can be trusted, in words. */
public final class MarginWords {

    /** Below this a difference is none that could be read, fraction of the chord. */
    public static final double LEAST = 0.0005;

    private MarginWords() {}

    /** A band in points, never as if there were none. */
    public static String band(double fraction) {
        return "± " + (fraction < LEAST ? "less than 0.1" : QuantityFormat.rounded(fraction * 100, 1));
    }

    /** On its own, or counted from a neutral point known from flying; empty where the margin is not known. */
    public static String trust(MarginAnswer answer) {
        Double band = answer.band();
        KnownZero zero = answer.zero();
        if (answer.margin() == null) {
            return "";
        }
        if (zero == null) {
            return band == null ? "" : "± " + QuantityFormat.rounded(band * 100, 0) + " on its own";
        }
        return "Zero by " + zero.version() + (zero.reason().isEmpty() ? "" : ": " + zero.reason())
                + (band == null || band == 0 ? "" : "; " + band(band) + " from there");
    }
}
