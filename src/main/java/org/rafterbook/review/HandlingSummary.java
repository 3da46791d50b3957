package org.rafterbook.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Counted;

/**
 * How a group of flights handled: the outcome that stands beside the time, because a slower version that recovers may be
 * the better one. Every flight counts, also those cut short or left out of the times.
 *
 * @param flights flights in the group
 * @param recovered upsets the model recovered from, of those in which it could
 * @param stalls stalls a flight, where somebody counted
 * @param steers steers a flight, where somebody counted
 */
public record HandlingSummary(int flights, Share recovered, Rate stalls, Rate steers) {

    /** Points of margin that are usually taken together. */
    public static final double MARGIN_STRETCH = 2;

    /** The summary of these flights. */
    public static HandlingSummary of(List<ReviewFlight> flights) {
        return new HandlingSummary(
                flights.size(),
                Share.of(
                        count(flights, f -> f.handling().recovery() == Handling.Recovery.YES),
                        count(
                                flights,
                                f -> f.handling().recovery() == Handling.Recovery.YES
                                        || f.handling().recovery() == Handling.Recovery.NO)),
                rate(flights, f -> f.handling().stalls()),
                rate(flights, f -> f.handling().steers()));
    }

    /** One summary a version flown, that is for each combination of all settings, in the order first flown. */
    public static Map<Map<String, Level>, HandlingSummary> byVersion(List<ReviewFlight> flights) {
        return by(flights, ReviewFlight::settings);
    }

    /** One summary a value of a setting, numbers ascending, then words; flights without the setting are left out. */
    public static Map<Level, HandlingSummary> bySetting(List<ReviewFlight> flights, String setting) {
        Map<String, Level> levels = new HashMap<>();
        Map<String, HandlingSummary> byKey = by(
                flights.stream().filter(f -> f.settings().containsKey(setting)).toList(), f -> {
                    Level level = Objects.requireNonNull(f.settings().get(setting));
                    levels.putIfAbsent(level.key(), level);
                    return level.key();
                });
        Map<Level, HandlingSummary> sorted = new TreeMap<>(LevelOrder.NUMBERS_FIRST);
        byKey.forEach((key, summary) -> sorted.put(Objects.requireNonNull(levels.get(key)), summary));
        return sorted;
    }

    /**
     * One summary a stretch of the stability margin, ascending; flights without a margin are left out.
     *
     * @param width of a stretch, points; stretches begin at whole multiples of it
     */
    public static Map<Span, HandlingSummary> byMargin(List<ReviewFlight> flights, double width) {
        Map<Long, List<ReviewFlight>> stretches = new TreeMap<>();
        for (ReviewFlight flight : flights) {
            Double margin = flight.marginPercent();
            if (margin != null) {
                stretches
                        .computeIfAbsent((long) Math.floor(margin / width), k -> new ArrayList<>())
                        .add(flight);
            }
        }
        Map<Span, HandlingSummary> summaries = new LinkedHashMap<>();
        stretches.forEach((k, group) -> summaries.put(new Span(k * width, (k + 1) * width), of(group)));
        return summaries;
    }

    /** True where nobody noted anything about how these flights handled. */
    public boolean isEmpty() {
        return !recovered.isKnown() && !stalls.isKnown() && !steers.isKnown();
    }

    /** What is known, such as "Upsets recovered: 3 of 4 (36 to 94 %). Stalls: 0.4 a flight (0.2 to 0.9), 4 in 10 flights." */
    public String sentence() {
        if (isEmpty()) {
            return "Nothing noted about handling on " + Counted.of(flights, "flight") + ".";
        }
        StringBuilder text = new StringBuilder();
        if (recovered.isKnown()) {
            text.append("Upsets recovered: ").append(recovered.words()).append(". ");
        }
        if (stalls.isKnown()) {
            text.append("Stalls: ").append(stalls.words()).append(". ");
        }
        if (steers.isKnown()) {
            text.append("Steers: ").append(steers.words()).append(". ");
        }
        return text.toString().strip();
    }

    private static <K> Map<K, HandlingSummary> by(List<ReviewFlight> flights, Function<ReviewFlight, K> key) {
        Map<K, List<ReviewFlight>> groups = new LinkedHashMap<>();
        flights.forEach(f ->
                groups.computeIfAbsent(key.apply(f), k -> new ArrayList<>()).add(f));
        Map<K, HandlingSummary> summaries = new LinkedHashMap<>();
        groups.forEach((k, group) -> summaries.put(k, of(group)));
        return summaries;
    }

    private static Rate rate(List<ReviewFlight> flights, Function<ReviewFlight, @Nullable Integer> read) {
        int count = 0;
        int counted = 0;
        for (ReviewFlight flight : flights) {
            Integer value = read.apply(flight);
            if (value != null) {
                count += value;
                counted++;
            }
        }
        return Rate.of(count, counted);
    }

    private static int count(List<ReviewFlight> flights, Predicate<ReviewFlight> test) {
        return (int) flights.stream().filter(test).count();
    }
}
