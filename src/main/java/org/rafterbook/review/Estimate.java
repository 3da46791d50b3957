package org.rafterbook.review;

import java.util.Arrays;

/**
 * What the draws say about one effect on the logarithm of duration.
 *
 * @param mean posterior mean
 * @param sd posterior standard deviation
 * @param low 5 % quantile
 * @param high 95 % quantile
 * @param probabilityRaised share of draws above 0
 * @param probabilityAbovePercent share of draws above +1 %
 */
public record Estimate(
        double mean, double sd, double low, double high, double probabilityRaised, double probabilityAbovePercent) {

    private static final double ONE_PERCENT = StrictMath.log(1.01);

    static Estimate of(double[] draws) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        double mean = Draws.mean(draws);
        double squares = 0;
        for (double draw : draws) {
            squares += (draw - mean) * (draw - mean);
        }
        return new Estimate(
                mean,
                Math.sqrt(squares / (draws.length - 1)),
                quantile(sorted, 0.05),
                quantile(sorted, 0.95),
                above(sorted, 0),
                above(sorted, ONE_PERCENT));
    }

    public double effectPercent() {
        return Percent.of(mean);
    }

    public double lowPercent() {
        return Percent.of(low);
    }

    public double highPercent() {
        return Percent.of(high);
    }

    /** Quantile by linear interpolation between order statistics. */
    static double quantile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int next = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[next] - sorted[below]);
    }

    private static double above(double[] sorted, double limit) {
        int count = 0;
        for (int i = sorted.length - 1; i >= 0 && sorted[i] > limit; i--) {
            count++;
        }
        return (double) count / sorted.length;
    }
}
