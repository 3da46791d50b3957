package org.rafterbook.stability;

import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** Finds where a margin that is computed by trials takes a wished value: first between even trials, then closing in. */
final class MarginSearch {

    private static final int MOST_STEPS = 40;

    /** A hundredth of the 0.1 points that answers are held to. */
    private static final double CLOSE = 1e-5;

    private final DoubleFunction<@Nullable Double> margin;
    private final double wished;
    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;
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

    /** Margin less the wished one; NaN, which is no sign change, where it is unknown. */
    private double off(double x) {
        Double value = margin.apply(x);
        if (value == null) {
            unknownAt = x;
            return Double.NaN;
        }
        least = Math.min(least, value);
        most = Math.max(most, value);
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
