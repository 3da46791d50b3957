package org.rafterbook.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Parsed;
import org.rafterbook.units.UserError;

/** Reads days and moments of a table: ISO, or days by the pattern of a mapping. */
final class DateReader {

    private static final int EARLIEST = 1900;
    private static final int LATEST = 2200;
    private static final Pattern MOMENT =
            Pattern.compile("(.+?)[T ]\\s*(\\d{1,2}:\\d{2}(?::\\d{2}(?:[.,]\\d{1,9})?)?)");
    private static final DateTimeFormatter TIME = new DateTimeFormatterBuilder()
            .appendPattern("H:mm[:ss]")
            .appendFraction(ChronoField.NANO_OF_SECOND, 0, 9, true)
            .toFormatter(Locale.ROOT);

    private final DateTimeFormatter days;
    private final String pattern;

    private DateReader(String pattern, DateTimeFormatter days) {
        this.pattern = pattern;
        this.days = days.withResolverStyle(ResolverStyle.STRICT);
    }

    static DateReader iso() {
        return new DateReader("2025-10-28", DateTimeFormatter.ISO_LOCAL_DATE);
    }

    /**
     * Days by a pattern of y, M and d, such as {@code d.M.yyyy}; null reads ISO.
     *
     * @throws UserError of bad input where the pattern is none
     */
    static DateReader of(@Nullable String pattern) {
        if (pattern == null) {
            return iso();
        }
        try {
            // Strict reading needs the year itself (u), not the year of an era (y).
            DateTimeFormatter days = DateTimeFormatter.ofPattern(pattern.replace('y', 'u'), Locale.ENGLISH);
            LocalDate sample = LocalDate.of(2025, 10, 28);
            if (!sample.equals(LocalDate.parse(days.format(sample), days.withResolverStyle(ResolverStyle.STRICT)))) {
                throw new DateTimeException("the pattern leaves something out");
            }
            return new DateReader(pattern, days);
        } catch (IllegalArgumentException | DateTimeException e) {
            throw UserError.badInput("'" + pattern + "' is no pattern of a date; type for example d.M.yyyy.");
        }
    }

    Parsed<LocalDate> day(String text) {
        try {
            LocalDate day = LocalDate.parse(text, days);
            return day.getYear() < EARLIEST || day.getYear() > LATEST
                    ? Parsed.refused("the year of '" + text + "' is out of all proportion.")
                    : Parsed.accepted(day);
        } catch (DateTimeException e) {
            return Parsed.refused("'" + text + "' is no date that reads as " + pattern + ".");
        }
    }

    /** A moment; a time alone is one of the given day. */
    Parsed<LocalDateTime> moment(String text, @Nullable LocalDate day) {
        Matcher moment = MOMENT.matcher(text);
        if (moment.matches()) {
            return day(moment.group(1).strip())
                    .then(d -> time(moment.group(2)).then(t -> Parsed.accepted(LocalDateTime.of(d, t))));
        }
        return day == null
                ? Parsed.refused(notAMoment(text))
                : time(text).then(t -> Parsed.accepted(LocalDateTime.of(day, t)));
    }

    private Parsed<LocalTime> time(String text) {
        try {
            return Parsed.accepted(LocalTime.parse(text.replace(',', '.'), TIME));
        } catch (DateTimeException e) {
            return Parsed.refused(notAMoment(text));
        }
    }

    private String notAMoment(String text) {
        return "'" + text + "' is no moment that reads as " + pattern + "T19:08:00, without an offset.";
    }
}
