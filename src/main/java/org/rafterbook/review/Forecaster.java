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

    Forecaster(SeasonFit fit) {
        this.fit = fit;
        design = fit.design();
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
        double mean = now == null ? dot(contrast) : now.mean();
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

    private double spread(String setting, Level from, Level to, double[] contrast, int perSide) {
        int flown = design.flights().size();
        int columns = contrast.length;
        double[][] dense = new double[flown + 2 * perSide][columns];
        int[] group = new int[dense.length];
        double[] weight = new double[dense.length];
        for (int i = 0; i < flown; i++) {
            ReviewFlight flight = design.flights().get(i);
            for (int j = 0; j < design.columns().size(); j++) {
                dense[i][j] = design.at(i, j);
            }
            group[i] = design.sessions().indexOf(flight.sessionId());
            weight[i] = fit.weight(i);
        }
        for (int i = flown; i < dense.length; i++) {
            dense[i] = planned(setting, columns);
            dense[i][place(setting, i % 2 == 0 ? from : to, i % 2)] = 1;
            group[i] = design.sessions().size();
            weight[i] = 1;
        }
        NormalEquations equations = new NormalEquations(
                new SparseRows(dense, columns, group, design.sessions().size() + 1));
        equations.set(
                weight,
                new double[dense.length],
                fit.flightVariance(),
                precision(columns),
                new double[columns],
                1 / fit.dayVariance());
        return Math.sqrt(equations.variance(contrast));
    }

    /** A flight like the last one, at the mean turns, density and place in the session, without this setting's value. */
    private double[] planned(String setting, int columns) {
        double[] row = new double[columns];
        int last = design.flights().size() - 1;
        for (int j = 0; j < design.columns().size(); j++) {
            DesignColumn column = design.columns().get(j);
            boolean carried = switch (column.kind()) {
                case INTERCEPT, TREND, MOTOR, BUILD -> true;
                case LEVEL -> !column.of().equals(setting);
                case TURNS, DENSITY, ORDER, WINDS, PARTIAL -> false;
            };
            row[j] = carried ? design.at(last, j) : 0;
        }
        return row;
    }

    private double[] precision(int columns) {
        double[] own = new double[design.columns().size()];
        fit.model().precision(fit.tauSquared(), own);
        double[] precision = Arrays.copyOf(own, columns);
        Arrays.fill(precision, own.length, columns, 2 / fit.tauSquared());
        return precision;
    }

    private double dot(double[] contrast) {
        double sum = 0;
        double[] means = fit.draws().columnMeans();
        for (int j = 0; j < means.length; j++) {
            sum += contrast[j] * means[j];
        }
        return sum;
    }
}
