package org.rafterbook.review;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.Counted;

/** Says in words what a season's flights tell as a whole, and what is needed where they tell too little. */
final class SeasonSentences {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final String NONE_CHANGED = "No setting was changed from one recorded value to another";
    private static final double LARGEST_LEVEL_SCALE = 0.15;
    private static final double LARGEST_SCATTER = 0.12;

    private final ReviewInput input;
    private final List<ReviewFlight> counted;
    private final @Nullable Design design;
    private final List<String> sentences = new ArrayList<>();

    SeasonSentences(ReviewInput input, List<ReviewFlight> counted, @Nullable Design design) {
        this.input = input;
        this.counted = counted;
        this.design = design;
    }

    List<String> of(@Nullable SeasonFigures figures, int pairs, List<FarOff> farOff) {
        flights();
        if (pairs == 0 && counted.size() > 1) {
            sentences.add(
                    (isAnyUnrecorded() ? NONE_CHANGED : "All flights were made at the same settings")
                            + ", so there is no change to judge. Change one setting and fly both values on one day, 3 + 3, alternating.");
        }
        thinDays();
        if (figures != null) {
            scatter(figures);
        }
        covariates();
        mixedValues();
        input.settingKeys().forEach(this::unrecorded);
        marked();
        farOff.forEach(this::farOff);
        return List.copyOf(sentences);
    }

    private void flights() {
        int exact = exact();
        int aside = (int) input.flights().stream()
                .filter(f -> input.fullMotorsOnly() && f.counts() && f.motor().isPartial())
                .count();
        int left = input.flights().size() - counted.size() - aside;
        sentences.add(Counted.of(input.flights().size(), "flight") + " of " + input.model() + ": "
                + exact + " clean, " + (counted.size() - exact) + " cut short and counted as \u201cat least\u201d, "
                + left + " left out"
                + (aside == 0 ? "." : ", " + aside + " on a part of a motor set aside."));
        long takenOut =
                input.flights().stream().filter(f -> f.outcome().takenOut()).count();
        if (takenOut > 0) {
            sentences.add(Counted.of(takenOut, "flight") + (takenOut == 1 ? " is" : " are")
                    + " left out by the flyer although flagged after " + (takenOut == 1 ? "its" : "their")
                    + " time was known or nobody knows when: what is said rests on that choice.");
        }
        if (counted.size() < 2) {
            sentences.add("Nothing can be compared with fewer than two flights that count. "
                    + "Log a second flight, then change one setting.");
        } else if (exact == 0) {
            sentences.add(
                    "Every flight was cut short: each says only \u201cat least this long\u201d, so no change can "
                            + "be judged. A clean flight at each value is needed next. Fly on fewer turns or with less launch torque.");
        }
    }

    private int exact() {
        return (int) counted.stream().filter(ReviewFlight::isExact).count();
    }

    private void thinDays() {
        long days = counted.stream().map(ReviewFlight::sessionId).distinct().count();
        long thin = counted.stream()
                .collect(Collectors.groupingBy(ReviewFlight::sessionId, Collectors.counting()))
                .values()
                .stream()
                .filter(n -> n == 1)
                .count();
        if (thin > 0 && counted.size() > 1) {
            sentences.add(
                    (thin == 1 ? "1 of " + days + " days holds" : thin + " of " + days + " days hold")
                            + " only one flight that counts: such a day compares nothing. Two or more flights a day are needed.");
        }
    }

    private void scatter(SeasonFigures figures) {
        long days = counted.stream().map(ReviewFlight::sessionId).distinct().count();
        if (exact() - days >= 2) {
            sentences.add("From one flight to the next on one day your times scatter by about "
                    + Percent.scatter(figures.flightScatter())
                    + (days < 3 || figures.dayScatter() == null
                            ? "."
                            : "; the day alone moves them by about " + Percent.scatter(figures.dayScatter()) + "."));
        }
        Estimate trend = figures.trend();
        if (trend != null && days >= 3) {
            String band = " (90 % interval " + Percent.band(trend.lowPercent(), trend.highPercent()) + ").";
            sentences.add(
                    trend.low() < 0 && trend.high() > 0
                            ? "Whether your times rose or fell over the season whatever you did cannot be told: best guess "
                                    + Percent.signed(trend.effectPercent()) + band
                            : "Your times " + (trend.mean() > 0 ? "rose" : "fell") + " about "
                                    + Percent.plain(Math.abs(trend.effectPercent()))
                                    + " over the season whatever you did" + band);
        }
        if (figures.sigma() > LARGEST_SCATTER) {
            sentences.add("Times scatter far more than this model expects, so its numbers do not fit these flights. "
                    + "Look for mistyped times and flights that were something else.");
        } else if (figures.levelScale() > LARGEST_LEVEL_SCALE) {
            sentences.add(
                    "The changes moved the times far more than this model expects, so its numbers may not fit these "
                            + "flights. Look for mistyped times and for what else was changed with them.");
        }
    }

    private void covariates() {
        if (design == null) {
            return;
        }
        int n = counted.size();
        if (design.filledTurns() == n) {
            sentences.add("No turns were logged: a gain from more turns cannot be told from one of trim. "
                    + "Log turns wound and left.");
        } else if (design.filledTurns() > 0) {
            sentences.add(filled(design.filledTurns(), "turns"));
        }
        if (design.filledDensity() == n) {
            sentences.add("The air was not logged: temperature, humidity and pressure would take its part out of the "
                    + "day's.");
        } else if (design.filledDensity() > 0) {
            sentences.add(filled(design.filledDensity(), "air density"));
        }
        int assumed =
                (int) counted.stream().filter(ReviewFlight::humidityAssumed).count();
        if (assumed > 0) {
            sentences.add(Counted.of(assumed, "flight")
                    + (assumed == 1 ? " has no humidity of its own" : " have no humidity of their own")
                    + ": 50 % was assumed.");
        }
        int partial = (int) counted.stream().filter(f -> f.motor().isPartial()).count();
        if (partial > 0) {
            sentences.add(Counted.of(partial, "flight") + " on a part of the motor " + (partial == 1 ? "is" : "are")
                    + " scaled to the full one and compared only with their like.");
        }
    }

    private static String filled(int flights, String what) {
        return Counted.of(flights, "flight") + " without " + what + (flights == 1 ? " takes its" : " take their")
                + " session's mean, else the season's.";
    }

    /** A setting typed once as a number and once as words has values that cannot be put in order. */
    private void mixedValues() {
        for (String key : input.settingKeys()) {
            List<Level> levels = input.flights().stream()
                    .map(f -> f.settings().get(key))
                    .filter(Objects::nonNull)
                    .toList();
            String words = levels.stream()
                    .filter(level -> level.asNumber() == null)
                    .map(level -> "\u201c" + level.label() + "\u201d")
                    .distinct()
                    .collect(Collectors.joining(", "));
            boolean numbers = levels.stream().anyMatch(level -> level.asNumber() != null);
            if (numbers && !words.isEmpty()) {
                sentences.add(input.setting(key).label() + " is a number on some flights and words on others (" + words
                        + "): each is taken as a value of its own. Where they mean the same, put the value right.");
            }
        }
    }

    private boolean isAnyUnrecorded() {
        return input.settingKeys().stream().anyMatch(key -> unrecordedFlights(key) > 0);
    }

    /** Flights that count without a value of a setting that others have; 0 where none has one. */
    private long unrecordedFlights(String key) {
        long without =
                counted.stream().filter(f -> !f.settings().containsKey(key)).count();
        return without == counted.size() ? 0 : without;
    }

    private void unrecorded(String key) {
        long without = unrecordedFlights(key);
        if (without > 0) {
            sentences.add(input.setting(key).label() + " was not recorded on " + Counted.of(without, "flight") + ", so "
                    + (without == 1 ? "it tells" : "they tell") + " nothing about its values.");
        }
    }

    private void farOff(FarOff far) {
        counted.stream()
                .filter(f -> f.id().equals(far.flightId()))
                .findFirst()
                .ifPresent(flight -> sentences.add(
                        "Flight " + flight.orderInSession() + " of " + DAY.format(flight.sessionDate()) + ", "
                                + ClockTime.minutesSeconds(flight.durationS()) + ", lies far off: about "
                                + ClockTime.minutesSeconds(far.expectedS())
                                + " was to be expected. It hardly counts; look at it, the time may be mistyped."));
    }

    /** Flights flagged too late to be left out. */
    private void marked() {
        for (ReviewFlight flight : counted) {
            String reason = flight.outcome().reason();
            if (flight.isExact() && reason != null) {
                sentences.add("Flight " + flight.orderInSession() + " of " + DAY.format(flight.sessionDate()) + ": "
                        + reason + ".");
            }
        }
    }
}
