package org.rafterbook.review;

/** A weighted mixture of normal distributions, for bands of estimates averaged over models. */
final class NormalMixture {

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
            sum += weight[i] * Normal.cumulative((x - mean[i]) / sd[i]);
        }
        return sum;
    }

    /** The value below which lies the share {@code p}, to 1e-8: Newton's steps, halving where they leave the bracket. */
    double quantile(double p) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double mean = mean();
        double variance = 0;
        for (int i = 0; i < weight.length; i++) {
            low = Math.min(low, this.mean[i] - 8 * sd[i]);
            high = Math.max(high, this.mean[i] + 8 * sd[i]);
            variance += weight[i] * (sd[i] * sd[i] + (this.mean[i] - mean) * (this.mean[i] - mean));
        }
        double x = mean + Math.sqrt(variance) * (p < 0.5 ? -1 : 1);
        for (int i = 0; i < 100; i++) {
            double off = -p;
            double slope = 0;
            for (int k = 0; k < weight.length; k++) {
                double z = (x - this.mean[k]) / sd[k];
                double density = Normal.density(z);
                off += weight[k] * Normal.cumulative(z, density);
                slope += weight[k] * density / sd[k];
            }
            low = off < 0 ? x : low;
            high = off < 0 ? high : x;
            double next = x - off / slope;
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - x) < 1e-8) {
                return next;
            }
            x = next;
        }
        return x;
    }
}
