package org.rafterbook.exchange;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.DecimalMark;

/**
 * A table of flights as read.
 *
 * @param file the file's name
 * @param mark decimal mark its settings' numbers are read with
 * @param settings the columns of settings
 */
public record FlightTable(String file, DecimalMark mark, List<SettingColumn> settings, List<FlightRow> rows) {

    public FlightTable {
        settings = List.copyOf(settings);
        rows = List.copyOf(rows);
    }

    /**
     * One column of a setting.
     *
     * @param name the setting's name or sheet path
     * @param heading as the table writes it
     * @param unit unit of its bare numbers, null for the setting's own
     */
    public record SettingColumn(
            String name, String heading, @Nullable String unit) {}
}
