package org.rafterbook.stability;

import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** Finds where a margin that is computed by trials takes a wished value: between even trials closing in, or going on from a guess. */
final class MarginSearch {

    private static final int MOST_STEPS = 40;
    private static final int MOST_NEAR = 6;

    /** A hundredth of the 0.1 points that answers are held to. */
    private static final double CLOSE = 1e-5;

    private final DoubleFunction<@Nullable Double> margin;
    private final double wished;
    private double least = Double.POSITIVE_INFINITY;
    private double leastAt = Double.NaN;
    private double most = Double.NEGATIVE_INFINITY;
    private double mostAt = Double.NaN;
    private double unknownAt = Double.NaN;

    MarginSearch(DoubleFunction<@Nullable Double> margin, double wished) {
        this.margin = margin;
        this.wished = wished;
    }

    /** A value tried at which the margin is unknown; NaN where it always was known. */
    double unknownAt() {
        return unknownAt;
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }

    /** The value in the range nearest to the present one at which the margin is as wished; null for none. */
    @Nullable
    Double nearest(double from, double to, double present, int trials) {
        Double best = null;
        double x0 = Double.NaN;
        double f0 = Double.NaN;
        for (int i = 0; i < trials; i++) {
            double x1 = from + (to - from) * i / (trials - 1);
            double f1 = off(x1);
            Double found = null;
            if (Math.abs(f1) < CLOSE) {
                found = x1;
            } else if (f0 * f1 < 0) {
                found = close(x0, f0, x1, f1);
            }
            if (found != null && (best == null || Math.abs(found - present) < Math.abs(best - present))) {
                best = found;
            }
            x0 = x1;
            f0 = f1;
        }
        return best;
    }

    /** Whether all margins tried are further than this from the wished one, to the same side. */
    boolean missesBy(double distance) {
        return least > wished + distance || most < wished - distance;
    }

    /** Tries the two values at which another search found its least and its largest margin. */
    void endsOf(MarginSearch other) {
        if (other.least <= other.most) {
            off(other.leastAt);
            off(other.mostAt);
        }
    }

    /** Change of the margin per value about a value, from two trials a part of the range away; 0 where it is unknown. */
    double slope(double at, double range) {
        double step = range / 8;
        double slope = (off(at + step) - off(at - step)) / (2 * step);
        return Double.isFinite(slope) ? slope : 0;
    }

    /** The value near a first guess at which the margin is as wished, going on by a known slope; null where that fails. */
    @Nullable
    Double near(double guess, double slope, double from, double to) {
        double x = guess;
        double steps = slope == 0 ? 0 : MOST_NEAR;
        for (int step = 0; step < steps && x >= from && x <= to; step++) {
            double off = off(x);
            if (Math.abs(off) < CLOSE) {
                return x;
            }
            x -= off / slope;
        }
        return null;
    }

    /** Margin less the wished one; NaN, which is no sign change, where it is unknown. */
    private double off(double x) {
        Double value = margin.apply(x);
        if (value == null) {
            unknownAt = x;
            return Double.NaN;
        }
        if (value < least) {
            least = value;
            leastAt = x;
        }
        if (value > most) {
            most = value;
            mostAt = x;
        }
        return value - wished;
    }

    /** Regula falsi with the Illinois halving, which never leaves the bracket. */
    private @Nullable Double close(double a, double fa, double b, double fb) {
        double x0 = a;
        double f0 = fa;
        double x1 = b;
        double f1 = fb;
        for (int step = 0; step < MOST_STEPS; step++) {
            double x = x1 - f1 * (x1 - x0) / (f1 - f0);
            double f = off(x);
            if (Double.isNaN(f)) {
                return null;
            }
            if (Math.abs(f) < CLOSE) {
                return x;
            }
            if (f * f1 < 0) {
                x0 = x1;
                f0 = f1;
            } else {
                f0 /= 2;
            }
            x1 = x;
            f1 = f;
        }
        return Math.abs(f1) < 100 * CLOSE ? x1 : null;
    }
}
