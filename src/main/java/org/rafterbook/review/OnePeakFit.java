package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/** The shapes of {@link OnePeak} weighed by the flights, and what follows from them at the places asked for. */
final class OnePeakFit {

    /** Components lighter than this are left out of bands: all of them together weigh less than 1e-6. */
    private static final double NEGLIGIBLE = 1e-10;

    private final double[] at;
    private final List<OnePeak.Cell> cells;
    private final double[][] weight;
    private final double[][][] mean;
    private final double[][][] covariance;
    private final double[] curve;

    /** Weights [noise][shape]; means [noise][shape][place]; covariances [noise][place][place]. */
    OnePeakFit(double[] at, List<OnePeak.Cell> cells, double[][] weight, double[][][] mean, double[][][] covariance) {
        this.at = at;
        this.cells = cells;
        this.weight = weight;
        this.mean = mean;
        this.covariance = covariance;
        this.curve = new double[at.length];
        for (int h = 0; h < weight.length; h++) {
            for (int c = 0; c < weight[h].length; c++) {
                for (int k = 0; k < at.length; k++) {
                    curve[k] += weight[h][c] * mean[h][c][k];
                }
            }
        }
    }

    /**
     * What one place is worth against another, in log duration.
     *
     * @param expected expected gain, losses counted as none
     * @param chance probability to be better
     * @param mean mean difference
     * @param sd standard deviation of the difference
     */
    record Gain(double expected, double chance, double mean, double sd) {}

    int places() {
        return at.length;
    }

    double at(int k) {
        return at[k];
    }

    /** Mean log duration at a place in an average session. */
    double curve(int k) {
        return curve[k];
    }

    /** Log duration at a place in an average session, with what the flights leave open. */
    NormalMixture spread(int k) {
        double[][] kept = new double[3][weight.length * OnePeak.SHAPES.size()];
        int n = 0;
        double sum = 0;
        for (int h = 0; h < weight.length; h++) {
            double sd = StrictMath.sqrt(Math.max(covariance[h][k][k], 1e-18));
            for (int c = 0; c < weight[h].length; c++) {
                if (weight[h][c] > NEGLIGIBLE) {
                    kept[0][n] = weight[h][c];
                    kept[1][n] = mean[h][c][k];
                    kept[2][n++] = sd;
                    sum += weight[h][c];
                }
            }
        }
        for (int i = 0; i < n; i++) {
            kept[0][i] /= sum;
        }
        return new NormalMixture(Arrays.copyOf(kept[0], n), Arrays.copyOf(kept[1], n), Arrays.copyOf(kept[2], n));
    }

    /** Probability that the peak lies at each place of the grid. */
    double[] peak() {
        double[] probability = new double[OnePeak.GRID];
        for (double[] row : weight) {
            for (int c = 0; c < row.length; c++) {
                probability[OnePeak.SHAPES.get(c).peak()] += row[c];
            }
        }
        return probability;
    }

    /** Places of the grid, likeliest first until they hold {@code share}, in ascending order. */
    List<Integer> peakRegion(double share) {
        double[] probability = peak();
        List<Integer> byWeight = IntStream.range(0, probability.length)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> -probability[k]))
                .toList();
        List<Integer> region = new ArrayList<>();
        double sum = 0;
        for (int k : byWeight) {
            if (sum >= share) {
                break;
            }
            region.add(k);
            sum += probability[k];
        }
        return region.stream().sorted().toList();
    }

    /** Expected loss of log duration at each place of the grid against the unknown best place of it. */
    double[] expectedLoss() {
        double[] loss = new double[OnePeak.GRID];
        for (int h = 0; h < weight.length; h++) {
            for (int c = 0; c < weight[h].length; c++) {
                double top = Double.NEGATIVE_INFINITY;
                for (int k = 0; k < OnePeak.GRID; k++) {
                    top = Math.max(top, mean[h][c][k]);
                }
                for (int k = 0; k < OnePeak.GRID; k++) {
                    loss[k] += weight[h][c] * (top - mean[h][c][k]);
                }
            }
        }
        return loss;
    }

    /**
     * Expected gain of one place over another that is itself only estimated: per component {@code d Phi(d / sqrt v) +
     * sqrt(v) phi(d / sqrt v)} with the variance {@code v} of the difference (expected improvement over a noisy
     * incumbent, arXiv 2310.05166).
     */
    Gain gain(int k, int incumbent) {
        double expected = 0;
        double chance = 0;
        double mean = 0;
        double squares = 0;
        for (int h = 0; h < weight.length; h++) {
            double[][] s = covariance[h];
            double sd = StrictMath.sqrt(Math.max(s[k][k] + s[incumbent][incumbent] - 2 * s[k][incumbent], 1e-18));
            for (int c = 0; c < weight[h].length; c++) {
                double d = this.mean[h][c][k] - this.mean[h][c][incumbent];
                double z = d / sd;
                double phi = Normal.cumulative(z);
                expected += weight[h][c] * (d * phi + sd * Normal.density(z));
                chance += weight[h][c] * phi;
                mean += weight[h][c] * d;
                squares += weight[h][c] * (d * d + sd * sd);
            }
        }
        return new Gain(expected, chance, mean, Math.sqrt(Math.max(squares - mean * mean, 0)));
    }

    /**
     * Probability that flights scatter about the curve as much as these do if it is right: chi-square of the level
     * means about the curve, with two degrees of freedom less than levels (simulated: a curve with one peak is
     * rejected at 2 % in 0 to 4 % of seasons). Values are taken to the nearest place of the grid. 1 with fewer than
     * three levels.
     */
    double agreement() {
        TreeMap<Long, Integer> levels = new TreeMap<>();
        for (OnePeak.Cell cell : cells) {
            levels.putIfAbsent(Math.round(cell.x() * (OnePeak.GRID - 1)), levels.size());
        }
        if (levels.size() < 3) {
            return 1;
        }
        double flightVariance = 0;
        double dayVariance = 0;
        for (int h = 0; h < weight.length; h++) {
            OnePeak.Scatter noise = OnePeak.NOISES.get(h);
            for (double w : weight[h]) {
                flightVariance += w * noise.flight() * noise.flight();
                dayVariance += w * noise.day() * noise.day();
            }
        }
        int n = cells.size();
        RealMatrix v = MatrixUtils.createRealMatrix(n, n);
        RealMatrix level = MatrixUtils.createRealMatrix(n, levels.size());
        RealVector residual = MatrixUtils.createRealVector(new double[n]);
        for (int i = 0; i < n; i++) {
            OnePeak.Cell cell = cells.get(i);
            for (int j = 0; j < n; j++) {
                v.setEntry(i, j, OnePeak.scatterCovariance(cell, cells.get(j), flightVariance, dayVariance));
            }
            long key = Math.round(cell.x() * (OnePeak.GRID - 1));
            level.setEntry(i, levels.getOrDefault(key, 0), 1);
            residual.setEntry(i, cell.mean() - interpolated(cell.x()));
        }
        var solver = new CholeskyDecomposition(v).getSolver();
        RealVector ones = MatrixUtils.createRealVector(new double[n]).mapAdd(1);
        RealVector weighed = solver.solve(ones);
        residual.mapSubtractToSelf(weighed.dotProduct(residual) / weighed.dotProduct(ones));
        RealVector score = level.transpose().operate(solver.solve(residual));
        RealMatrix information = level.transpose().multiply(solver.solve(level));
        RealVector shift =
                new SingularValueDecomposition(information).getSolver().solve(score);
        double chiSquare = Math.max(score.dotProduct(shift), 0);
        return 1 - new ChiSquaredDistribution(levels.size() - 2.0).cumulativeProbability(chiSquare);
    }

    private double interpolated(double x) {
        double steps = Math.min(Math.max(x, 0), 1) * (OnePeak.GRID - 1);
        int k = Math.min((int) steps, OnePeak.GRID - 2);
        double part = steps - k;
        return (1 - part) * curve[k] + part * curve[k + 1];
    }
}
