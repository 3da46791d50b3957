package org.rafterbook.work;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.ColumnRule;
import org.rafterbook.exchange.Mapping;
import org.rafterbook.units.DecimalMark;

/**
 * What the flyer says about tables whose headings do not speak for themselves.
 *
 * @param mapping a mapping for every table of flights it covers, null where none was chosen
 * @param columns single columns, winning over the mapping
 * @param fixed what holds for every row, keyed by heading of a field
 * @param mark null for the mapping's own
 * @param winderRatio null for the mapping's own
 * @param datePattern null for the mapping's own
 */
public record ImportChoices(
        @Nullable Mapping mapping,
        List<ColumnRule> columns,
        Map<String, String> fixed,
        @Nullable DecimalMark mark,
        @Nullable Double winderRatio,
        @Nullable String datePattern) {

    public ImportChoices {
        columns = List.copyOf(columns);
        fixed = Map.copyOf(fixed);
    }

    /** Nothing said: own headings and remembered mappings only. */
    public static ImportChoices none() {
        return new ImportChoices(null, List.of(), Map.of(), null, null, null);
    }

    /** This mapping and nothing else. */
    public static ImportChoices by(Mapping mapping) {
        return new ImportChoices(mapping, List.of(), Map.of(), null, null, null);
    }
}
