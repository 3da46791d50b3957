package org.rafterbook.exchange;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.DecimalMark;

/**
 * Which column of a table holds which known heading, and how its cells are to be read.
 *
 * @param columns keyed by known heading
 * @param fixed texts that hold for every row, keyed by known heading
 */
record Binding(
        CsvTable table,
        Map<String, Bound> columns,
        Map<String, String> fixed,
        DecimalMark mark,
        @Nullable Double winderRatio,
        DateReader dates) {

    /** One bound column. */
    record Bound(int index, String heading, @Nullable String unit, Map<String, String> words) {}

    /** The binding of a table that writes the known headings themselves. */
    static Binding own(CsvTable table) {
        Map<String, Bound> columns = new HashMap<>();
        for (int i = 0; i < table.headings().size(); i++) {
            String heading = table.headings().get(i);
            columns.put(heading.toLowerCase(Locale.ROOT), new Bound(i, heading, null, Map.of()));
        }
        return new Binding(table, columns, Map.of(), MarkOfTable.of(table, columns.values()), null, DateReader.iso());
    }
}
