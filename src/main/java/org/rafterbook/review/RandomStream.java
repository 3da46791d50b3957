package org.rafterbook.review;

import org.hipparchus.random.Well19937c;

/**
 * Random numbers that are the same on every machine to the last digit: WELL19937c with a fixed seed, and StrictMath where
 * a function is needed.
 */
final class RandomStream {

    private static final double TO_UNIT = 0x1.0p-53;
    private static final double WORD_TO_SIDES = 0x1.0p-31;
    private static final double WORD_TO_UNIT = 0x1.0p-32;

    private final Well19937c words;
    private double kept;
    private boolean hasKept;

    RandomStream(long seed) {
        words = new Well19937c(seed);
    }

    /** Uniform on the open interval 0 to 1. */
    double uniform() {
        long bits = ((long) (words.nextInt() >>> 6) << 27) | (words.nextInt() >>> 5);
        return (bits + 0.5) * TO_UNIT;
    }

    /**
     * Standard normal, by Marsaglia's polar method (from memory of Marsaglia and Bray 1964). One word of 32 bits for each
     * side of the square is fine enough and halves the time.
     */
    double normal() {
        if (hasKept) {
            hasKept = false;
            return kept;
        }
        while (true) {
            double u = (words.nextInt() + 0.5) * WORD_TO_SIDES;
            double v = (words.nextInt() + 0.5) * WORD_TO_SIDES;
            double q = u * u + v * v;
            if (q < 1 && q > 0) {
                double factor = Math.sqrt(-2 * StrictMath.log(q) / q);
                kept = v * factor;
                hasKept = true;
                return u * factor;
            }
        }
    }

    /** Exponential with mean 1. */
    double exponential() {
        return -StrictMath.log(uniform());
    }

    /** Gamma with this shape (at least 1) and scale 1 (Marsaglia and Tsang 2000, from memory). */
    double gamma(double shape) {
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double x = normal();
            double root = 1 + c * x;
            if (root <= 0) {
                continue;
            }
            double v = root * root * root;
            double u = (words.nextInt() + 0.5) * WORD_TO_UNIT + 0.5;
            double squared = x * x;
            if (u < 1 - 0.0331 * squared * squared
                    || StrictMath.log(u) < 0.5 * squared + d * (1 - v + StrictMath.log(v))) {
                return d * v;
            }
        }
    }

    /**
     * Standard normal within these ends, either of which may be infinite: plain rejection where the ends leave enough,
     * else Robert's exponential or uniform proposals (Robert 1995, from memory).
     */
    double normalBetween(double low, double high) {
        if (high == Double.POSITIVE_INFINITY) {
            return normalAbove(low);
        }
        if (low == Double.NEGATIVE_INFINITY) {
            return -normalAbove(-high);
        }
        if (low >= high) {
            return low;
        }
        if (low < 0 && high <= 0) {
            return -normalBetween(-high, -low);
        }
        double nearest = Math.max(low, 0);
        boolean narrow = (high - low) * Math.max(nearest, 0.4) < 1;
        while (true) {
            double z = narrow ? low + (high - low) * uniform() : normalAbove(low);
            if (z < high && (!narrow || StrictMath.log(uniform()) < (nearest * nearest - z * z) / 2)) {
                return z;
            }
        }
    }

    private double normalAbove(double low) {
        if (low < 0.5) {
            while (true) {
                double z = normal();
                if (z > low) {
                    return z;
                }
            }
        }
        double rate = (low + Math.sqrt(low * low + 4)) / 2;
        while (true) {
            double z = low + exponential() / rate;
            double off = z - rate;
            if (StrictMath.log(uniform()) < -off * off / 2) {
                return z;
            }
        }
    }
}
