package org.rafterbook.review;

import java.util.ArrayList;
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

    /** What a clean flight's time weighs against one that lies where it is expected, at most 1. */
    double trust(int flight) {
        return Math.min(1, draws.weightMeans()[flight]);
    }

    /** The clean flights that lie so far off that they hardly count, in flying order. */
    List<FarOff> farOff() {
        List<FarOff> far = new ArrayList<>();
        for (int i = 0; i < design.flights().size(); i++) {
            ReviewFlight flight = design.flights().get(i);
            if (flight.isExact() && draws.weightMeans()[i] < FarOff.LEAST_WEIGHT) {
                far.add(new FarOff(
                        flight.id(),
                        StrictMath.exp(expected(i)) * flight.motor().partialFraction()));
            }
        }
        return far;
    }

    private double expected(int flight) {
        double sum = draws.groupMeans()[model.rows().group[flight]];
        for (int j = 0; j < design.columns().size(); j++) {
            sum += design.at(flight, j) * draws.columnMeans()[j];
        }
        return sum;
    }

    private static double meanSquare(double[] draws) {
        double sum = 0;
        for (double draw : draws) {
            sum += draw * draw;
        }
        return sum / draws.length;
    }
}
