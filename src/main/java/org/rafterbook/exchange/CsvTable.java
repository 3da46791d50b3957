package org.rafterbook.exchange;

import java.util.List;

/**
 * A table as a file holds it, every cell as text without blanks around it.
 *
 * @param file the file's name, for sentences
 * @param separator what stands between cells
 * @param headings one a column, none empty, none twice
 * @param headingLine line of the headings
 */
public record CsvTable(String file, char separator, List<String> headings, int headingLine, List<Row> rows) {

    public CsvTable {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param line line of the file it begins in, from 1
     * @param cells as many as there are headings
     */
    public record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }
}
