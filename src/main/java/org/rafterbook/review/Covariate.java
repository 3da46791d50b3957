package org.rafterbook.review;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One covariate of a list of flights, with gaps filled: a flight without it takes its session's mean, else the mean of
 * all.
 */
final class Covariate {

    private final double[] values;
    private final BitSet filled;

    private Covariate(double[] values, BitSet filled) {
        this.values = values;
        this.filled = filled;
    }

    /** Natural logarithm of the turns used, scaled to full motors; null where no flight has them. */
    static @Nullable Covariate lnTurns(List<ReviewFlight> flights) {
        return of(flights, f -> ln(f.motor().fullTurns()));
    }

    /** Natural logarithm of the air's density; null where no flight has it. */
    static @Nullable Covariate lnDensity(List<ReviewFlight> flights) {
        return of(flights, f -> ln(f.densityKgM3()));
    }

    static @Nullable Covariate of(List<ReviewFlight> flights, Function<ReviewFlight, @Nullable Double> read) {
        Mean all = new Mean();
        Map<String, Mean> sessions = new HashMap<>();
        for (ReviewFlight flight : flights) {
            Double value = read.apply(flight);
            if (value != null) {
                all.add(value);
                sessions.computeIfAbsent(flight.sessionId(), id -> new Mean()).add(value);
            }
        }
        if (all.count == 0) {
            return null;
        }
        double[] values = new double[flights.size()];
        BitSet filled = new BitSet();
        for (int i = 0; i < values.length; i++) {
            ReviewFlight flight = flights.get(i);
            Double value = read.apply(flight);
            if (value == null) {
                value = sessions.getOrDefault(flight.sessionId(), all).value();
                filled.set(i);
            }
            values[i] = value;
        }
        return new Covariate(values, filled);
    }

    double at(int flight) {
        return values[flight];
    }

    double mean() {
        Mean mean = new Mean();
        for (double value : values) {
            mean.add(value);
        }
        return mean.value();
    }

    /** Number of flights that had no value of their own. */
    int filled() {
        return filled.cardinality();
    }

    /** True for a flight that had no value of its own. */
    boolean isFilled(int flight) {
        return filled.get(flight);
    }

    private static @Nullable Double ln(@Nullable Double value) {
        return value != null && value > 0 ? Double.valueOf(StrictMath.log(value)) : null;
    }

    /** A running mean. */
    private static final class Mean {
        private double sum;
        private int count;

        void add(double value) {
            sum += value;
            count++;
        }

        double value() {
            return sum / count;
        }
    }
}
