package org.rafterbook.ui.season;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.Counted;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Season;
import org.rafterbook.work.SeasonReport;

/** How the season is told. */
final class SeasonWords {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final String[] COUNTS = {"no", "one", "two", "three", "four"};

    private SeasonWords() {}

    static String day(LocalDate date) {
        return DAY.format(date);
    }

    static String time(@Nullable Double seconds, boolean atLeast) {
        if (seconds == null) {
            return QuantityFormat.UNKNOWN;
        }
        return atLeast ? ClockTime.atLeast(seconds) : ClockTime.minutesSeconds(seconds);
    }

    static String time(Season.Flown flown) {
        return time(flown.durationS(), flown.atLeast());
    }

    static String percent(@Nullable Double fraction, @Nullable Double band) {
        return SeasonReport.margin(fraction, band);
    }

    /** A day of the season on show, whose year everybody knows. */
    static String shortDay(LocalDate date) {
        return SHORT.format(date);
    }

    /** What is most worth knowing of the tables: the last evening, and how many there were. */
    static String summary(SeasonShown shown) {
        List<Season.Evening> evenings = shown.evenings();
        return evenings.isEmpty()
                ? ""
                : Counted.of(evenings.size(), "evening") + ", the last on "
                        + day(evenings.get(0).visit().date());
    }

    static String hours(double seconds) {
        long minutes = (long) (seconds / 60);
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    /** The season that begins in July of a year. */
    static String season(int year) {
        return year + " to " + (year + 1);
    }

    /** "two wings, 380 over 340": spans in the flyer's unit, of one wing with its widest chord. */
    static String wings(Season.@Nullable Flyer flyer, QuantityFormat format) {
        if (flyer == null || flyer.wings().isEmpty()) {
            return "no airframe sheet";
        }
        List<Season.Wing> wings = flyer.wings();
        String count = wings.size() < COUNTS.length ? COUNTS[wings.size()] : String.valueOf(wings.size());
        if (wings.size() == 1) {
            return count + " wing, " + length(wings.get(0).spanM(), format) + " × "
                    + length(wings.get(0).chordM(), format);
        }
        return count + " wings, "
                + wings.stream().map(w -> length(w.spanM(), format)).collect(Collectors.joining(" over "));
    }

    private static String length(double m, QuantityFormat format) {
        return format.shortest(Quantity.LENGTH, m, 2).replaceAll("[^0-9.]+$", "");
    }

    /** "Teasel", or with a part of a motor "Teasel, half motor". */
    static String model(Season.Flown flown) {
        return flown.model() + part(flown.fraction());
    }

    private static String part(double fraction) {
        if (fraction == 1) {
            return "";
        }
        return fraction == 0.5 ? ", half motor" : ", " + QuantityFormat.rounded(fraction, 2) + " of a motor";
    }

    /** Under which ceiling, and what a part of a motor stands for. */
    static String under(Season.Best best, QuantityFormat format) {
        Season.Flown flight = best.flight();
        String ceiling = best.ceilingM() == null ? "" : format.text(Quantity.HEIGHT, best.ceilingM());
        String full = flight.fraction() == 1
                ? ""
                : "× " + QuantityFormat.rounded(1 / flight.fraction(), flight.fraction() == 0.5 ? 0 : 2) + " = "
                        + ClockTime.minutesSeconds(flight.fullS());
        return ceiling.isEmpty() || full.isEmpty() ? ceiling + full : ceiling + ", " + full;
    }

    /** What a change did, shortened to its first setting. */
    static String change(List<String> changes) {
        if (changes.isEmpty()) {
            return "";
        }
        String first = changes.get(0);
        int was = first.indexOf(", was");
        return (was < 0 ? first : first.substring(0, was))
                + (changes.size() > 1 ? " and " + (changes.size() - 1) + " more" : "");
    }

    /** A flight in a line, for its mark. */
    static String line(Season.Flown flown) {
        String full =
                flown.fraction() == 1 ? "" : part(flown.fraction()) + ": " + ClockTime.minutesSeconds(flown.fullS());
        return flown.version() + ", " + day(flown.date()) + ", " + time(flown) + full;
    }
}
