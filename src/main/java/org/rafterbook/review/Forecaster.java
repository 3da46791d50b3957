package org.rafterbook.review;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Forecasts trials from the log as it stands: the flights planned are appended to the effects model, half of them with
 * each value, on one day of their own, and the spread of the difference is compared before and after.
 *
 * <p>Variances are taken at their posterior means; Student's errors with six degrees of freedom carry 7/9 of the
 * information of normal ones, a flight cut short 0.35 of a whole one.
 */
final class Forecaster {

    private static final int MOST_PER_SIDE = 30;

    private final SeasonFit fit;
    private final Design design;
    private final NormalEquations equations;

    Forecaster(SeasonFit fit) {
        this.fit = fit;
        design = fit.design();
        equations = flown();
    }

    /**
     * What flights with two values of a setting would show.
     *
     * @param now the effect of {@code to} against {@code from} as estimated, null where it was not
     */
    Forecast of(String setting, Level from, Level to, int perSide, @Nullable Estimate now) {
        double[] contrast = contrast(setting, from, to);
        double before = spread(setting, from, to, contrast, 0);
        double after = spread(setting, from, to, contrast, perSide);
        double mean = now == null ? dot(contrast, fit.draws().columnMeans()) : now.mean();
        double sdNow = now == null ? before : now.sd();
        return Forecast.of(perSide, mean, sdNow, sdNow * after / before);
    }

    /** The smallest trial, from 3 + 3 on, after which a difference of this size in log duration could not hide. */
    Forecast smallestFor(String setting, Level from, Level to, double difference, @Nullable Estimate now) {
        Forecast forecast = of(setting, from, to, 3, now);
        for (int perSide = 4; perSide <= MOST_PER_SIDE && forecast.halfWidth() > difference; perSide++) {
            forecast = of(setting, from, to, perSide, now);
        }
        return forecast;
    }

    /** Coefficients over the design's columns and two more, for values that have none yet. */
    private double[] contrast(String setting, Level from, Level to) {
        double[] contrast = new double[design.columns().size() + 2];
        contrast[place(setting, from, 0)] = -1;
        contrast[place(setting, to, 1)] = 1;
        return contrast;
    }

    private int place(String setting, Level level, int spare) {
        List<DesignColumn> columns = design.columns();
        for (int j = 0; j < columns.size(); j++) {
            DesignColumn c = columns.get(j);
            if (isLevelOf(c, setting) && c.level().equals(level.key())) {
                return j;
            }
        }
        return columns.size() + spare;
    }

    private static boolean isLevelOf(DesignColumn column, String setting) {
        return column.kind() == DesignColumn.Kind.LEVEL && column.of().equals(setting);
    }

    /**
     * Spread of the contrast with so many flights of each value more, on one day of their own: they are a change of rank
     * two of the normal equations as they stand (Woodbury's identity).
     */
    private double spread(String setting, Level from, Level to, double[] contrast, int perSide) {
        double[] c = equations.whitened(contrast);
        if (perSide == 0) {
            return Math.sqrt(dot(c, c));
        }
        double[] a = equations.whitened(planned(setting, from, 0));
        double[] b = equations.whitened(planned(setting, to, 1));
        double flights = perSide / fit.flightVariance();
        double day = flights * flights / (2 * flights + 1 / fit.dayVariance());
        double determinant = flights * (flights - 2 * day);
        double aa = (flights - day) / determinant + dot(a, a);
        double ab = day / determinant + dot(a, b);
        double bb = (flights - day) / determinant + dot(b, b);
        double ca = dot(c, a);
        double cb = dot(c, b);
        double told = (bb * ca * ca - 2 * ab * ca * cb + aa * cb * cb) / (aa * bb - ab * ab);
        return Math.sqrt(dot(c, c) - told);
    }

    /** The flights flown, with two more columns for values that have none yet. */
    private NormalEquations flown() {
        int columns = design.columns().size() + 2;
        double[][] dense = new double[design.flights().size()][columns];
        int[] group = new int[dense.length];
        double[] weight = new double[dense.length];
        for (int i = 0; i < dense.length; i++) {
            for (int j = 0; j < design.columns().size(); j++) {
                dense[i][j] = design.at(i, j);
            }
            group[i] = design.sessions().indexOf(design.flights().get(i).sessionId());
            weight[i] = fit.weight(i);
        }
        NormalEquations flown = new NormalEquations(
                new SparseRows(dense, columns, group, design.sessions().size()));
        flown.set(
                weight,
                new double[dense.length],
                fit.flightVariance(),
                precision(columns),
                new double[columns],
                1 / fit.dayVariance());
        return flown;
    }

    /** A flight like the last one, at the mean turns and density, noted, and place in the session, with this value of the setting. */
    private double[] planned(String setting, Level value, int spare) {
        double[] row = new double[design.columns().size() + 2];
        int last = design.flights().size() - 1;
        for (int j = 0; j < design.columns().size(); j++) {
            DesignColumn column = design.columns().get(j);
            boolean carried = switch (column.kind()) {
                case INTERCEPT, TREND, MOTOR, BUILD -> true;
                case LEVEL -> !column.of().equals(setting);
                case TURNS, DENSITY, ORDER, UNLOGGED, WINDS, PARTIAL -> false;
            };
            row[j] = carried ? design.at(last, j) : 0;
        }
        row[place(setting, value, spare)] = 1;
        return row;
    }

    private double[] precision(int columns) {
        double[] own = new double[design.columns().size()];
        fit.model().precision(fit.tauSquared(), own);
        double[] precision = Arrays.copyOf(own, columns);
        Arrays.fill(precision, own.length, columns, 2 / fit.tauSquared());
        return precision;
    }

    /** Sum of the products of what both have; the second may be the shorter. */
    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int j = 0; j < other.length; j++) {
            sum += one[j] * other[j];
        }
        return sum;
    }
}
