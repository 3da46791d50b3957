package org.rafterbook.review;

import java.util.List;

/**
 * The effects model of a season and its posterior.
 *
 * @param design columns and flights
 * @param model the model with its priors
 * @param draws draws and posterior means
 */
record SeasonFit(Design design, CensoredModel model, Draws draws) {

    /** Student's errors with six degrees of freedom scatter as normal ones of this many times the variance. */
    static final double STUDENT_VARIANCE = 9.0 / 7;

    static SeasonFit of(Design design, List<double[]> contrasts, Progress progress) {
        CensoredModel model = design.model();
        return new SeasonFit(design, model, Sampler.run(model, contrasts, progress));
    }

    /** Variance of one clean flight about its expectation, at the posterior mean. */
    double flightVariance() {
        return STUDENT_VARIANCE * meanSquare(draws.sigma());
    }

    double dayVariance() {
        return meanSquare(draws.between());
    }

    double tauSquared() {
        return meanSquare(draws.tau());
    }

    /** What a flight weighs in the normal equations that stand for the posterior at its mean variances. */
    double weight(int flight) {
        return design.flights().get(flight).isExact() ? 1 : ResponsePoint.AT_LEAST_WEIGHT;
    }

    private static double meanSquare(double[] draws) {
        double sum = 0;
        for (double draw : draws) {
            sum += draw * draw;
        }
        return sum / draws.length;
    }
}
