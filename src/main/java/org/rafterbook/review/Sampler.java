package org.rafterbook.review;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Gibbs sampler of a {@link CensoredModel} with a fixed seed: one chain, the same draws on every machine.
 *
 * <p>Censored responses are drawn within their ends (Chib 1992, J. Econometrics 51:79), Student's errors are normal ones
 * with a gamma weight each, half-t scales are mixtures of inverse gammas (Gelman 2006, Bayesian Analysis 1:515).
 */
final class Sampler {

    static final int BURN_IN = 1000;
    static final int KEPT = 20_000;

    private static final long SEED = 20_260_120;
    private static final int REPORT_EVERY = 200;
    /** Times that repeat to the second would draw the scale to nothing; no model flies alike within half a per cent. */
    private static final double LEAST_SIGMA_SQUARED = 0.005 * 0.005;

    private final CensoredModel model;
    private final SparseRows rows;
    private final RandomStream random = new RandomStream(SEED);
    private final NormalEquations equations;
    private final double[] response;
    private final double[] weight;
    private final double[] fit;
    private final double[] residual;
    private final double[] precision;
    private final double[] theta;
    private final double[] group;
    private final int levels;
    private double sigmaSquared = 0.0025;
    private double betweenSquared = 0.0009;
    private double tauSquared = 0.0064;
    private double sigmaMixture = 1;
    private double betweenMixture = 1;

    private Sampler(CensoredModel model) {
        this.model = model;
        rows = model.rows();
        equations = new NormalEquations(rows);
        response = new double[rows.size];
        weight = new double[rows.size];
        fit = new double[rows.size];
        residual = new double[rows.size];
        precision = new double[rows.columns];
        theta = new double[rows.columns];
        group = new double[rows.groups];
        levels = model.levels();
        start();
    }

    /** Draws with the usual burn-in and number of draws. */
    static Draws run(CensoredModel model, List<double[]> contrasts, Progress progress) {
        return run(model, contrasts, BURN_IN, KEPT, progress);
    }

    /**
     * Draws.
     *
     * @param contrasts one coefficient a column each
     * @throws java.util.concurrent.CancellationException where {@code progress} says so
     */
    static Draws run(CensoredModel model, List<double[]> contrasts, int burnIn, int kept, Progress progress) {
        Sampler sampler = new Sampler(model);
        for (int i = 0; i < burnIn; i++) {
            if (i % REPORT_EVERY == 0) {
                progress.report((double) i / (burnIn + kept));
            }
            sampler.step();
        }
        return sampler.keep(contrasts, burnIn, kept, progress);
    }

    private void start() {
        double sum = 0;
        for (int i = 0; i < rows.size; i++) {
            double low = model.low()[i];
            response[i] = Double.isInfinite(low) ? model.high()[i] : low;
            sum += response[i];
        }
        Arrays.fill(weight, 1);
        theta[0] = sum / rows.size;
        rows.multiply(theta, group, fit);
        if (model.sigma().isFixed()) {
            sigmaSquared = square(model.sigma().scale());
        }
        if (model.between().isFixed()) {
            betweenSquared = square(model.between().scale());
        }
        if (model.tau().isFixed()) {
            tauSquared = square(model.tau().scale());
        }
    }

    private Draws keep(List<double[]> contrasts, int burnIn, int kept, Progress progress) {
        Sparse[] sparse = contrasts.stream().map(Sparse::of).toArray(Sparse[]::new);
        double[][] values = new double[sparse.length][kept];
        double[] sigma = new double[kept];
        double[] between = new double[kept];
        double[] tau = new double[kept];
        double[] columnMeans = new double[theta.length];
        double[] groupMeans = new double[group.length];
        double[] responseMeans = new double[response.length];
        double[] weightMeans = new double[response.length];
        for (int draw = 0; draw < kept; draw++) {
            if (draw % REPORT_EVERY == 0) {
                progress.report((double) (burnIn + draw) / (burnIn + kept));
            }
            step();
            for (int k = 0; k < sparse.length; k++) {
                values[k][draw] = sparse[k].dot(theta);
            }
            sigma[draw] = Math.sqrt(sigmaSquared);
            between[draw] = Math.sqrt(betweenSquared);
            tau[draw] = Math.sqrt(tauSquared);
            add(columnMeans, theta, kept);
            add(groupMeans, group, kept);
            add(responseMeans, response, kept);
            add(weightMeans, weight, kept);
        }
        return new Draws(values, sigma, between, tau, columnMeans, groupMeans, responseMeans, weightMeans);
    }

    private void step() {
        drawResponses();
        model.precision(tauSquared, precision);
        equations.set(weight, response, sigmaSquared, precision, model.priorMean(), 1 / betweenSquared);
        equations.draw(random, theta, group);
        rows.multiply(theta, group, fit);
        for (int i = 0; i < rows.size; i++) {
            residual[i] = response[i] - fit[i];
        }
        drawWeights();
        drawSigma();
        drawBetween();
        drawTau();
    }

    private void drawResponses() {
        for (int i = 0; i < rows.size; i++) {
            double low = model.low()[i];
            double high = model.high()[i];
            if (low < high) {
                double sd = Math.sqrt(sigmaSquared / weight[i]);
                response[i] = fit[i] + sd * random.normalBetween((low - fit[i]) / sd, (high - fit[i]) / sd);
            }
        }
    }

    private void drawWeights() {
        double degrees = model.errorDegrees();
        if (Double.isInfinite(degrees)) {
            return;
        }
        double shape = (degrees + 1) / 2;
        for (int i = 0; i < rows.size; i++) {
            weight[i] = 2 * random.gamma(shape) / (degrees + residual[i] * residual[i] / sigmaSquared);
        }
    }

    private void drawSigma() {
        ScalePrior prior = model.sigma();
        if (prior.isFixed()) {
            return;
        }
        double squares = 0;
        for (int i = 0; i < rows.size; i++) {
            squares += weight[i] * residual[i] * residual[i];
        }
        double degrees = prior.degrees();
        sigmaSquared = Math.max(
                LEAST_SIGMA_SQUARED, (degrees / sigmaMixture + squares / 2) / random.gamma((degrees + rows.size) / 2));
        sigmaMixture = mixture(prior, sigmaSquared);
    }

    private void drawBetween() {
        ScalePrior prior = model.between();
        if (prior.isFixed()) {
            return;
        }
        double squares = 0;
        for (double u : group) {
            squares += u * u;
        }
        double degrees = prior.degrees();
        betweenSquared = (degrees / betweenMixture + squares / 2) / random.gamma((degrees + group.length) / 2);
        betweenMixture = mixture(prior, betweenSquared);
    }

    private double mixture(ScalePrior prior, double variance) {
        return (prior.degrees() / variance + 1 / square(prior.scale())) / random.gamma((prior.degrees() + 1) / 2);
    }

    private void drawTau() {
        LevelPrior prior = model.tau();
        if (prior.isFixed()) {
            return;
        }
        double squares = 0;
        for (int j = 0; j < theta.length; j++) {
            squares += model.isLevel()[j] ? square(theta[j]) : 0;
        }
        // sum of squares unhalved: the variance of a level is tau^2 / 2
        tauSquared =
                (prior.degrees() * square(prior.scale()) / 2 + squares) / random.gamma((prior.degrees() + levels) / 2);
    }

    private static double square(double x) {
        return x * x;
    }

    private static void add(double[] means, double[] values, int count) {
        for (int j = 0; j < means.length; j++) {
            means[j] += values[j] / count;
        }
    }

    /** A contrast by its few entries. */
    private record Sparse(int[] column, double[] value) {

        static Sparse of(double[] dense) {
            int[] column =
                    IntStream.range(0, dense.length).filter(j -> dense[j] != 0).toArray();
            return new Sparse(
                    column, Arrays.stream(column).mapToDouble(j -> dense[j]).toArray());
        }

        double dot(double[] theta) {
            double sum = 0;
            for (int k = 0; k < column.length; k++) {
                sum += value[k] * theta[column[k]];
            }
            return sum;
        }
    }
}
