package org.rafterbook.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Two values of one setting that were changed directly into each other.
 *
 * @param setting key of the setting
 * @param from the value flown first
 * @param to the other
 */
record Pair(String setting, Level from, Level to) {

    /** All pairs of a season, each once, in the order in which they were first changed. */
    static List<Pair> of(ReviewInput input) {
        Map<Unordered, Pair> pairs = new LinkedHashMap<>();
        for (TrimStep step : input.steps()) {
            for (String setting : step.changed()) {
                Level before = step.from(setting);
                Level after = step.to(setting);
                boolean turned = firstFlown(input, setting, after) < firstFlown(input, setting, before);
                pairs.putIfAbsent(
                        new Unordered(setting, Set.of(before.key(), after.key())),
                        turned ? new Pair(setting, after, before) : new Pair(setting, before, after));
            }
        }
        return new ArrayList<>(pairs.values());
    }

    private static int firstFlown(ReviewInput input, String setting, Level value) {
        List<ReviewFlight> flights = input.flights();
        for (int i = 0; i < flights.size(); i++) {
            Level flown = flights.get(i).settings().get(setting);
            if (flown != null && flown.same(value)) {
                return i;
            }
        }
        return Integer.MAX_VALUE;
    }

    boolean isFrom(ReviewFlight flight) {
        return holds(flight, from);
    }

    boolean isTo(ReviewFlight flight) {
        return holds(flight, to);
    }

    private boolean holds(ReviewFlight flight, Level value) {
        Level flown = flight.settings().get(setting);
        return flown != null && flown.same(value);
    }

    /** Two values whichever came first. */
    private record Unordered(String setting, Set<String> values) {}
}
