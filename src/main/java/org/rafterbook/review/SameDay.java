package org.rafterbook.review;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.jspecify.annotations.Nullable;

/**
 * The same-day comparison: differences between flights of one day with everything else equal, at equal turns and air.
 *
 * <p>Nothing is fitted: ln duration - ln turns - 0.5 ln density is averaged per value within a stratum (session, build,
 * share of motor, other settings), and the strata's differences are averaged with weights n_a n_b / (n_a + n_b). The
 * interval is Student's with the variance pooled over the strata. Flights that were cut short are not used.
 */
public final class SameDay {

    private final List<ReviewFlight> exact;
    private final double[] z;

    /** Prepares the comparison of any values among these flights. */
    public SameDay(ReviewInput input) {
        List<ReviewFlight> counted = input.counted();
        Covariate turns = Covariate.lnTurns(counted);
        Covariate density = Covariate.lnDensity(counted);
        int[] rows = IntStream.range(0, counted.size())
                .filter(i -> counted.get(i).isExact())
                .toArray();
        exact = Arrays.stream(rows).mapToObj(counted::get).toList();
        z = Arrays.stream(rows)
                .mapToDouble(i -> StrictMath.log(counted.get(i).fullDurationS())
                        - (turns == null ? 0 : turns.at(i))
                        - (density == null ? 0 : 0.5 * density.at(i)))
                .toArray();
    }

    /** What the days that hold both values say; null where the two were not compared on one day. */
    public @Nullable SameDayResult compare(String setting, Level from, Level to) {
        return compare(
                setting, from, to, exact.stream().map(ReviewFlight::sessionId).collect(Collectors.toSet()));
    }

    /** The same from these sessions only. */
    @Nullable
    SameDayResult compare(String setting, Level from, Level to, Set<String> sessions) {
        Map<Stratum, Cell> cells = new LinkedHashMap<>();
        for (int i = 0; i < exact.size(); i++) {
            ReviewFlight flight = exact.get(i);
            Level level = flight.settings().get(setting);
            if (level != null && sessions.contains(flight.sessionId()) && (level.same(from) || level.same(to))) {
                cells.computeIfAbsent(Stratum.of(flight, setting), s -> new Cell())
                        .add(z[i], level.same(to));
            }
        }
        cells.values().removeIf(cell -> !cell.holdsBoth());
        if (cells.isEmpty()) {
            return null;
        }
        return result(List.copyOf(cells.values()), (int)
                cells.keySet().stream().map(Stratum::sessionId).distinct().count());
    }

    private static SameDayResult result(List<Cell> cells, int days) {
        double weight = cells.stream().mapToDouble(Cell::weight).sum();
        double effect = cells.stream().mapToDouble(Cell::weightedDifference).sum() / weight;
        int degrees = cells.stream().mapToInt(Cell::degrees).sum();
        Double se = null;
        Double low = null;
        Double high = null;
        if (degrees > 0) {
            double variance = cells.stream().mapToDouble(Cell::squares).sum() / degrees;
            double error = Math.sqrt(variance / weight);
            double half = new TDistribution(degrees).inverseCumulativeProbability(0.95) * error;
            se = error;
            low = effect - half;
            high = effect + half;
        }
        Permutation permutation = Permutation.within(cells, weight, effect);
        boolean allFromFirst = cells.stream().allMatch(cell -> cell.separated(false));
        boolean allToFirst = cells.stream().allMatch(cell -> cell.separated(true));
        return new SameDayResult(
                effect,
                se,
                low,
                high,
                degrees,
                permutation.p(),
                permutation.everyArrangement(),
                cells.stream().mapToInt(Cell::countFrom).sum(),
                cells.stream().mapToInt(Cell::countTo).sum(),
                days,
                allFromFirst || allToFirst);
    }
}
