package org.rafterbook.review;

import org.hipparchus.special.Erf;

/** A weighted mixture of normal distributions, for bands of estimates averaged over models. */
final class NormalMixture {

    private static final double ROOT_HALF = StrictMath.sqrt(0.5);

    private final double[] weight;
    private final double[] mean;
    private final double[] sd;

    /** Weights sum to one; all three arrays have one entry a component and are kept, not copied. */
    NormalMixture(double[] weight, double[] mean, double[] sd) {
        this.weight = weight;
        this.mean = mean;
        this.sd = sd;
    }

    double mean() {
        double sum = 0;
        for (int i = 0; i < weight.length; i++) {
            sum += weight[i] * mean[i];
        }
        return sum;
    }

    /** Probability of a value up to {@code x}. */
    double cumulative(double x) {
        double sum = 0;
        for (int i = 0; i < weight.length; i++) {
            sum += weight[i] * phi((x - mean[i]) / sd[i]);
        }
        return sum;
    }

    /** The value below which lies the share {@code p}, by the false position method (Illinois variant), to 1e-9. */
    double quantile(double p) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < weight.length; i++) {
            low = Math.min(low, mean[i] - 8 * sd[i]);
            high = Math.max(high, mean[i] + 8 * sd[i]);
        }
        double atLow = -p;
        double atHigh = 1 - p;
        int side = 0;
        for (int i = 0; i < 200 && high - low > 1e-9; i++) {
            // Every fourth step halves, so that a long flat tail cannot hold the bracket open.
            double x = i % 4 == 3 ? 0.5 * (low + high) : (low * atHigh - high * atLow) / (atHigh - atLow);
            double at = cumulative(x) - p;
            if (Math.abs(at) < 1e-12) {
                return x;
            }
            if (at < 0) {
                low = x;
                atLow = at;
                atHigh = side == -1 ? atHigh / 2 : atHigh;
                side = -1;
            } else {
                high = x;
                atHigh = at;
                atLow = side == 1 ? atLow / 2 : atLow;
                side = 1;
            }
        }
        return 0.5 * (low + high);
    }

    /** Standard normal distribution function. */
    static double phi(double z) {
        return 0.5 * Erf.erfc(-z * ROOT_HALF);
    }

    /** Standard normal density. */
    static double density(double z) {
        return StrictMath.exp(-0.5 * z * z) / StrictMath.sqrt(2 * StrictMath.PI);
    }
}
