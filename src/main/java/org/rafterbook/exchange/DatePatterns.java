package org.rafterbook.exchange;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The ways in which days are usually written in tables. */
public final class DatePatterns {

    /** Year, month, day as ISO 8601 has them. */
    public static final String ISO = "yyyy-MM-dd";

    private static final List<String> KNOWN = List.of(
            ISO,
            "d.M.yyyy",
            "d/M/yyyy",
            "M/d/yyyy",
            "d-M-yyyy",
            "M-d-yyyy",
            "yyyy/M/d",
            "yyyy.M.d",
            "d.M.yy",
            "d/M/yy",
            "M/d/yy",
            "d MMM yyyy");
    private static final LocalDate SAMPLE = LocalDate.of(2025, 10, 28);

    private DatePatterns() {}

    /** All of them, ISO first. */
    public static List<String> known() {
        return KNOWN;
    }

    /**
     * Those by which the most of these cells are days: several where the order of day and month cannot be told, all where
     * there are no cells, none where no cell is a day.
     */
    public static List<String> reading(Collection<String> cells) {
        if (cells.isEmpty()) {
            return KNOWN;
        }
        Map<String, Long> days = new LinkedHashMap<>();
        for (String pattern : KNOWN) {
            DateReader reader = DateReader.of(pattern);
            days.put(
                    pattern,
                    cells.stream()
                            .filter(cell -> reader.day(cell).toOptional().isPresent())
                            .count());
        }
        long most = days.values().stream().mapToLong(n -> n).max().orElse(0);
        return KNOWN.stream()
                .filter(pattern -> most > 0 && Long.valueOf(most).equals(days.get(pattern)))
                .toList();
    }

    /** The 28th of October 2025 by a pattern. */
    public static String sample(String pattern) {
        return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH).format(SAMPLE);
    }
}
