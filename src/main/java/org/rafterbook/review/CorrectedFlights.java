package org.rafterbook.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The flights of a season with everything the effects model knows taken out, but for what is being looked at: times at
 * the season's mean turns and air, at its last date, other settings as last flown. A flight cut short has its estimated
 * time.
 */
final class CorrectedFlights {

    private final SeasonFit fit;
    private final Design design;

    CorrectedFlights(SeasonFit fit) {
        this.fit = fit;
        design = fit.design();
    }

    /** The flights along a setting; those without a number for it are left out. */
    List<ResponsePoint> along(String setting) {
        return points(column -> isLevel(column) && column.of().equals(setting), flight -> {
            Level level = flight.settings().get(setting);
            return level == null ? null : level.value();
        });
    }

    /**
     * The flights along the stability margin; those without one are left out.
     *
     * @param movers settings that move the margin: their effects are the margin's and stay in
     */
    List<ResponsePoint> alongMargin(Set<String> movers) {
        return points(column -> isLevel(column) && movers.contains(column.of()), ReviewFlight::marginPercent);
    }

    private List<ResponsePoint> points(Predicate<DesignColumn> kept, Function<ReviewFlight, @Nullable Double> axis) {
        List<ResponsePoint> points = new ArrayList<>();
        for (int i = 0; i < design.flights().size(); i++) {
            ReviewFlight flight = design.flights().get(i);
            Double value = axis.apply(flight);
            if (value != null) {
                points.add(new ResponsePoint(
                        flight.id(),
                        value,
                        flight.sessionId(),
                        corrected(i, kept),
                        !flight.isExact(),
                        flight.isExact() ? fit.trust(i) : 1));
            }
        }
        return points;
    }

    private double corrected(int flight, Predicate<DesignColumn> kept) {
        int last = design.flights().size() - 1;
        double y = fit.draws().responseMeans()[flight];
        for (int j = 0; j < design.columns().size(); j++) {
            DesignColumn column = design.columns().get(j);
            if (!kept.test(column)) {
                double reference = switch (column.kind()) {
                    case INTERCEPT, TREND, LEVEL, BUILD -> design.at(last, j);
                    case TURNS, DENSITY, ORDER, UNLOGGED, MOTOR, WINDS, PARTIAL -> 0;
                };
                y -= (design.at(flight, j) - reference) * fit.draws().columnMeans()[j];
            }
        }
        return y;
    }

    private static boolean isLevel(DesignColumn column) {
        return column.kind() == DesignColumn.Kind.LEVEL;
    }
}
