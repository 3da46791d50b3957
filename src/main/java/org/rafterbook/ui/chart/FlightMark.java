package org.rafterbook.ui.chart;

import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.VersionMark;

/**
 * One flight on a chart.
 *
 * @param key what the mark stands for, handed back when it is picked or opened
 * @param atLeast whether it lasted at least this long: open with a tick upward
 * @param partial whether it flew on a partial motor: half the size
 * @param leftOut whether it says nothing about the model: a quiet cross
 * @param behind whether it stands behind those that are looked at: pale
 * @param says the flight in words, shown beside the mark when it is picked and read out
 */
public record FlightMark<K>(
        K key,
        double x,
        double y,
        VersionMark mark,
        boolean atLeast,
        boolean partial,
        boolean leftOut,
        boolean behind,
        String says) {

    static final double SIZE = 9;

    /** A flight that counts and is looked at like all others. */
    public FlightMark(K key, double x, double y, VersionMark mark, boolean atLeast, boolean partial, String says) {
        this(key, x, y, mark, atLeast, partial, false, false, says);
    }

    /** The same, standing behind those that are looked at or not. */
    public FlightMark<K> behind(boolean now) {
        return now == behind ? this : new FlightMark<>(key, x, y, mark, atLeast, partial, leftOut, now, says);
    }

    /** The same, at the edge where it lies beyond these. */
    public FlightMark<K> within(double low, double high) {
        double held = Math.max(low, Math.min(high, y));
        return held == y
                ? this
                : new FlightMark<>(
                        key, x, held, mark, atLeast, partial, leftOut, behind, says + ", beyond the picture's edge");
    }

    MarkStyle style() {
        return atLeast ? MarkStyle.AT_LEAST : MarkStyle.CLEAN;
    }

    double size() {
        return partial ? SIZE / 2 : SIZE;
    }
}
