package org.rafterbook.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.DecimalMark;
import org.rafterbook.units.UserError;

/**
 * How a flyer's own table of flights is read; remembered by its name.
 *
 * @param columns one rule a heading
 * @param fixed what holds for every row, keyed by heading of a {@link FlightField}, such as the model of a table of one
 *     model
 * @param mark decimal mark of the table
 * @param winderRatio motor turns for one turn of the winder's handle, null where no column counts those
 * @param datePattern such as {@code d.M.yyyy}; null for ISO dates
 */
public record Mapping(
        String name,
        List<ColumnRule> columns,
        Map<String, String> fixed,
        DecimalMark mark,
        @Nullable Double winderRatio,
        @Nullable String datePattern) {

    public Mapping {
        columns = List.copyOf(columns);
        fixed = Map.copyOf(fixed);
        if (winderRatio != null && !(winderRatio > 0 && Double.isFinite(winderRatio))) {
            throw UserError.badInput("A winder's ratio is a number above zero, such as 15.");
        }
    }

    /** A mapping with these columns, decimal points, ISO dates and nothing fixed. */
    public static Mapping of(String name, List<ColumnRule> columns) {
        return new Mapping(name, columns, Map.of(), DecimalMark.EITHER, null, null);
    }

    /** The same mapping under another name. */
    public Mapping withName(String other) {
        return new Mapping(other, columns, fixed, mark, winderRatio, datePattern);
    }

    /** The rule of a heading, whatever its case. */
    public Optional<ColumnRule> rule(String heading) {
        String wanted = heading.toLowerCase(Locale.ROOT);
        return columns.stream()
                .filter(c -> c.heading().toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst();
    }

    /** True where every heading of the table has a rule. */
    public boolean covers(CsvTable table) {
        return table.headings().stream().allMatch(h -> rule(h).isPresent());
    }
}
