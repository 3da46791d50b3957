package org.rafterbook.exchange;

import java.util.Collection;
import java.util.regex.Pattern;
import org.rafterbook.units.DecimalMark;

/** Finds out which decimal mark a table's numbers have. */
final class MarkOfTable {

    private static final Pattern POINT = Pattern.compile("[+-]?\\d*\\.\\d+");
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d*,\\d+");
    private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2}[.,]\\d{3}");

    private MarkOfTable() {}

    /**
     * The mark that stands in these columns' numbers; {@link DecimalMark#EITHER} where both or neither do, so that what
     * can be read in two ways is refused. Three digits after the mark tell nothing: they may be a group of thousands.
     */
    static DecimalMark of(CsvTable table, Collection<Binding.Bound> columns) {
        boolean point = false;
        boolean comma = false;
        for (Binding.Bound column : columns) {
            for (CsvTable.Row row : table.rows()) {
                String cell = row.cells().get(column.index());
                if (cell.length() < 2
                        || cell.length() > 20
                        || GROUPED.matcher(cell).matches()) {
                    continue;
                }
                point |= cell.indexOf('.') >= 0 && POINT.matcher(cell).matches();
                comma |= cell.indexOf(',') >= 0 && COMMA.matcher(cell).matches();
            }
        }
        if (point == comma) {
            return DecimalMark.EITHER;
        }
        return point ? DecimalMark.POINT : DecimalMark.COMMA;
    }
}
