package org.rafterbook.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;

/**
 * The response of log duration to one quantity scaled to 0..1, assuming one peak: every combination of the place of
 * the peak, its steepness and its skew, with a small smooth deviation on top, weighed by how well it explains the
 * flights. Deterministic; own method of this project, compared with others by simulation.
 *
 * <p>Each shape is {@code -depth * skew * ((x - peak) / 0.5)^2}. For each of twelve combinations of deviation, flight
 * scatter and day scatter the flights' covariance is {@code a^2 exp(-dx^2 / 0.18) + day^2 [same session] + flight^2 /
 * weight [same flight] + 0.25}, the last for the unknown level.
 */
final class OnePeak {

    /** Places at which the peak may lie, 0, 1/40 .. 1. */
    static final int GRID = 41;

    private static final double LEVEL_VARIANCE = 0.25;
    private static final double WIGGLE_LENGTH = 0.3;
    private static final double[] DEPTHS = {0.005, 0.01, 0.02, 0.04, 0.08, 0.16};
    private static final double[] DEPTH_PRIORS = {0.5, 0.7, 1, 1, 0.8, 0.5};
    /** Steepness below the peak, above it, prior. */
    private static final double[][] SKEWS = {{1, 1, 0.5}, {3, 1, 0.25}, {1, 3, 0.25}};

    private static final double[] WIGGLES = {0.003, 0.012};
    /** Scatter of flights, scatter of days, both in log duration. */
    private static final double[][] SCATTERS = {
        {0.035, 0.015}, {0.035, 0.035}, {0.05, 0.02}, {0.05, 0.045}, {0.075, 0.03}, {0.075, 0.06}
    };

    static final List<Shape> SHAPES = shapes();
    static final List<Scatter> NOISES = noises();

    /** One curve with its peak on a place of the grid. */
    record Shape(int peak, double depth, double below, double above, double logPrior) {
        double at(double x) {
            double u = (x - place(peak)) / 0.5;
            return -depth * (u < 0 ? below : above) * u * u;
        }
    }

    /** One assumption on how much the times deviate from the shape. */
    record Scatter(double wiggle, double flight, double day) {}

    /** Flights of one session at one place: their weighted mean tells the curve all they know. */
    record Cell(double x, int session, int flights, double weight, double mean, double squares) {}

    private OnePeak() {}

    static double place(int gridIndex) {
        return gridIndex / (double) (GRID - 1);
    }

    /**
     * Weighs all shapes by the flights.
     *
     * @param points the flights, values already scaled to 0..1 (beyond is allowed); at least one
     * @param extra further places at which the curve is wanted, after those of the grid
     */
    static OnePeakFit fit(List<ResponsePoint> points, double[] extra) {
        List<Cell> cells = cells(points);
        double[] at = new double[GRID + extra.length];
        for (int g = 0; g < GRID; g++) {
            at[g] = place(g);
        }
        System.arraycopy(extra, 0, at, GRID, extra.length);

        int n = points.size();
        double trusted = points.stream().mapToDouble(ResponsePoint::trust).sum();
        double meanY =
                points.stream().mapToDouble(p -> p.trust() * p.logDuration()).sum() / trusted;
        double[][] residual = new double[SHAPES.size()][cells.size()];
        double[][] shapeAt = new double[SHAPES.size()][at.length];
        for (int c = 0; c < SHAPES.size(); c++) {
            Shape shape = SHAPES.get(c);
            double meanM = 0;
            for (Cell cell : cells) {
                meanM += cell.flights * shape.at(cell.x) / n;
            }
            for (int i = 0; i < cells.size(); i++) {
                residual[c][i] = cells.get(i).mean - meanY - (shape.at(cells.get(i).x) - meanM);
            }
            for (int k = 0; k < at.length; k++) {
                shapeAt[c][k] = meanY - meanM + shape.at(at[k]);
            }
        }

        double[][] logWeight = new double[NOISES.size()][SHAPES.size()];
        double[][][] mean = new double[NOISES.size()][][];
        double[][][] covariance = new double[NOISES.size()][][];
        for (int h = 0; h < NOISES.size(); h++) {
            Scatter noise = NOISES.get(h);
            double[][] lower = factor(cells, noise);
            double[][] cross = new double[at.length][];
            for (int k = 0; k < at.length; k++) {
                double[] column = new double[cells.size()];
                for (int i = 0; i < column.length; i++) {
                    column[i] = smooth(noise.wiggle, cells.get(i).x - at[k]) + LEVEL_VARIANCE;
                }
                cross[k] = solve(lower, column);
            }
            double base = logNorm(cells, lower, noise.flight);
            mean[h] = new double[SHAPES.size()][at.length];
            for (int c = 0; c < SHAPES.size(); c++) {
                double[] whitened = solve(lower, residual[c]);
                logWeight[h][c] = base - 0.5 * dot(whitened, whitened) + SHAPES.get(c).logPrior;
                for (int k = 0; k < at.length; k++) {
                    mean[h][c][k] = shapeAt[c][k] + dot(cross[k], whitened);
                }
            }
            covariance[h] = new double[at.length][at.length];
            for (int k = 0; k < at.length; k++) {
                for (int l = 0; l <= k; l++) {
                    covariance[h][k][l] =
                            smooth(noise.wiggle, at[k] - at[l]) + LEVEL_VARIANCE - dot(cross[k], cross[l]);
                    covariance[h][l][k] = covariance[h][k][l];
                }
            }
        }
        return new OnePeakFit(at, cells, normalised(logWeight), mean, covariance);
    }

    /** Covariance of the cells' means without the smooth deviation, for tests of the curve. */
    static double scatterCovariance(Cell a, Cell b, double flightVariance, double dayVariance) {
        return LEVEL_VARIANCE + (a.session == b.session ? dayVariance : 0) + (a == b ? flightVariance / a.weight : 0);
    }

    private static double[][] factor(List<Cell> cells, Scatter noise) {
        double[][] v = new double[cells.size()][cells.size()];
        for (int i = 0; i < v.length; i++) {
            for (int j = 0; j < v.length; j++) {
                Cell a = cells.get(i);
                Cell b = cells.get(j);
                v[i][j] = smooth(noise.wiggle, a.x - b.x)
                        + scatterCovariance(a, b, noise.flight * noise.flight, noise.day * noise.day);
            }
        }
        return new CholeskyDecomposition(MatrixUtils.createRealMatrix(v)).getL().getData();
    }

    /**
     * Logarithm of the normal density's factor: the cells' determinant and what the spread inside the cells says, so
     * that cells stand exactly for their single flights.
     */
    private static double logNorm(List<Cell> cells, double[][] lower, double flightSd) {
        double sum = 0;
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            sum -= StrictMath.log(lower[i][i])
                    + (cell.flights - 1) * StrictMath.log(flightSd)
                    + cell.squares / (2 * flightSd * flightSd);
        }
        return sum;
    }

    private static double[][] normalised(double[][] logWeight) {
        double top = Double.NEGATIVE_INFINITY;
        for (double[] row : logWeight) {
            for (double w : row) {
                top = Math.max(top, w);
            }
        }
        double sum = 0;
        for (double[] row : logWeight) {
            for (int c = 0; c < row.length; c++) {
                row[c] = StrictMath.exp(row[c] - top);
                sum += row[c];
            }
        }
        for (double[] row : logWeight) {
            for (int c = 0; c < row.length; c++) {
                row[c] /= sum;
            }
        }
        return logWeight;
    }

    private static List<Cell> cells(List<ResponsePoint> points) {
        Map<String, Integer> sessions = new LinkedHashMap<>();
        Map<List<Object>, List<ResponsePoint>> groups = new LinkedHashMap<>();
        for (ResponsePoint point : points) {
            int session = sessions.computeIfAbsent(point.session(), s -> sessions.size());
            groups.computeIfAbsent(List.of(session, point.value()), k -> new ArrayList<>())
                    .add(point);
        }
        List<Cell> cells = new ArrayList<>();
        groups.forEach((key, group) -> {
            double weight = group.stream().mapToDouble(ResponsePoint::weight).sum();
            double mean = group.stream()
                            .mapToDouble(p -> p.weight() * p.logDuration())
                            .sum()
                    / weight;
            double squares = group.stream()
                    .mapToDouble(p -> p.weight() * (p.logDuration() - mean) * (p.logDuration() - mean))
                    .sum();
            cells.add(new Cell((double) key.get(1), (int) key.get(0), group.size(), weight, mean, squares));
        });
        return List.copyOf(cells);
    }

    private static double smooth(double wiggle, double dx) {
        double u = dx / WIGGLE_LENGTH;
        return wiggle * wiggle * StrictMath.exp(-0.5 * u * u);
    }

    private static double[] solve(double[][] lower, double[] right) {
        double[] x = new double[right.length];
        for (int i = 0; i < x.length; i++) {
            double sum = right[i];
            double[] row = lower[i];
            for (int j = 0; j < i; j++) {
                sum -= row[j] * x[j];
            }
            x[i] = sum / row[i];
        }
        return x;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static List<Shape> shapes() {
        double total = 0;
        for (double prior : DEPTH_PRIORS) {
            total += prior;
        }
        List<Shape> shapes = new ArrayList<>();
        for (int peak = 0; peak < GRID; peak++) {
            for (int d = 0; d < DEPTHS.length; d++) {
                for (double[] skew : SKEWS) {
                    double prior = DEPTH_PRIORS[d] / total * skew[2] / GRID;
                    shapes.add(new Shape(peak, DEPTHS[d], skew[0], skew[1], StrictMath.log(prior)));
                }
            }
        }
        return List.copyOf(shapes);
    }

    private static List<Scatter> noises() {
        List<Scatter> noises = new ArrayList<>();
        for (double wiggle : WIGGLES) {
            for (double[] scatter : SCATTERS) {
                noises.add(new Scatter(wiggle, scatter[0], scatter[1]));
            }
        }
        return List.copyOf(noises);
    }
}
