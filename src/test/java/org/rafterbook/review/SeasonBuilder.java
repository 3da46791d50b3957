package org.rafterbook.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Builds a season of flights for tests, one call a flight. */
final class SeasonBuilder {

    static final LocalDate FIRST_DAY = LocalDate.of(2025, 11, 4);

    private final List<ReviewFlight> flights = new ArrayList<>();
    private int day;
    private int order;

    /** Starts a session this many days after the first. */
    SeasonBuilder day(int days) {
        day = days;
        order = 0;
        return this;
    }

    SeasonBuilder fly(double durationS, Object... settings) {
        return fly(Outcome.exact(durationS), 1000.0, settings);
    }

    SeasonBuilder touch(double durationS, Object... settings) {
        return fly(Outcome.atLeast(durationS, "touched"), 1000.0, settings);
    }

    /** A flight; settings are key, value, key, value, with numbers or words as values. */
    SeasonBuilder fly(Outcome outcome, @Nullable Double turns, Object... settings) {
        Map<String, Level> levels = new TreeMap<>();
        for (int i = 0; i < settings.length; i += 2) {
            levels.put((String) settings[i], level(settings[i + 1]));
        }
        add(ReviewFlight.of("f" + flights.size(), "day" + day, FIRST_DAY.plusDays(day), order + 1, outcome, levels)
                .with(MotorUse.turns(turns), 1.19));
        return this;
    }

    SeasonBuilder add(ReviewFlight flight) {
        flights.add(flight);
        order++;
        return this;
    }

    List<ReviewFlight> flights() {
        return List.copyOf(flights);
    }

    ReviewInput input() {
        return ReviewInput.of("Teasel", flights, settingsOf(flights));
    }

    static Level level(Object value) {
        return value instanceof Number n ? Level.number(n.doubleValue()) : Level.word(value.toString());
    }

    static List<SettingInfo> settingsOf(List<ReviewFlight> flights) {
        return flights.stream()
                .flatMap(f -> f.settings().keySet().stream())
                .distinct()
                .sorted()
                .map(SettingInfo::named)
                .toList();
    }
}
