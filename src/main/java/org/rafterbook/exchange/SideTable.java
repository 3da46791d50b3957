package org.rafterbook.exchange;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.MachineNumber;
import org.rafterbook.units.Unit;
import org.rafterbook.units.Worded;

/**
 * The form of one table that stands beside the flights: its columns, how a row is read and how it is written.
 *
 * @param <R> a row
 */
public final class SideTable<R> {

    private final String stem;
    private final Function<Cells, R> reader;
    private final List<Column<R>> columns;

    /** A column: heading, whether a row needs it, and the cell's text of a row. */
    record Column<R>(
            String heading,
            boolean required,
            Function<R, @Nullable Object> value,
            @Nullable Unit unit) {

        String text(R row) {
            Object cell = value.apply(row);
            if (cell == null) {
                return "";
            }
            if (cell instanceof Double number) {
                return unit == null ? MachineNumber.text(number) : MachineNumber.text(number, unit);
            }
            if (cell instanceof Boolean yes) {
                return yes ? "yes" : "no";
            }
            if (cell instanceof Worded word) {
                return word.word();
            }
            return cell instanceof LocalDateTime at ? Moments.text(at) : cell.toString();
        }
    }

    SideTable(String stem, Function<Cells, R> reader, List<Column<R>> columns) {
        this.stem = stem;
        this.reader = reader;
        this.columns = columns;
    }

    static <R> Column<R> needed(String heading, Function<R, @Nullable Object> value) {
        return new Column<>(heading, true, value, null);
    }

    static <R> Column<R> needed(String heading, Unit unit, Function<R, @Nullable Object> value) {
        return new Column<>(heading, true, value, unit);
    }

    static <R> Column<R> plain(String heading, Function<R, @Nullable Object> value) {
        return new Column<>(heading, false, value, null);
    }

    static <R> Column<R> in(Unit unit, String heading, Function<R, @Nullable Object> value) {
        return new Column<>(heading, false, value, unit);
    }

    /** The file's name without its ending. */
    public String stem() {
        return stem;
    }

    public List<String> headings() {
        return columns.stream().map(Column::heading).toList();
    }

    /** True where the table is of this form: all its headings are known here and none that is needed is missing. */
    boolean fits(CsvTable table) {
        List<String> known = headings();
        List<String> found =
                table.headings().stream().map(h -> h.toLowerCase(Locale.ROOT)).toList();
        return known.containsAll(found)
                && columns.stream().filter(Column::required).allMatch(c -> found.contains(c.heading()));
    }

    /**
     * Reads the rows.
     *
     * @param problems takes every problem found; where there is one, nothing of the table may be kept
     */
    public List<R> read(CsvTable table, List<ImportProblem> problems) {
        List<String> known = headings();
        List<String> found =
                table.headings().stream().map(h -> h.toLowerCase(Locale.ROOT)).toList();
        for (int i = 0; i < found.size(); i++) {
            if (!known.contains(found.get(i))) {
                problems.add(new ImportProblem(
                        table.file(),
                        table.headingLine(),
                        table.headings().get(i),
                        "this column is not known here; known are " + String.join(", ", known) + "."));
            }
        }
        for (Column<R> column : columns) {
            if (column.required() && !found.contains(column.heading())) {
                problems.add(new ImportProblem(
                        table.file(), table.headingLine(), null, "there is no column " + column.heading() + "."));
            }
        }
        List<R> rows = new ArrayList<>();
        if (problems.isEmpty()) {
            Binding binding = Binding.own(table);
            for (CsvTable.Row row : table.rows()) {
                int before = problems.size();
                Cells cells = new Cells(binding, row, problems);
                columns.stream().filter(Column::required).forEach(c -> cells.required(c.heading()));
                if (problems.size() == before) {
                    R read = reader.apply(cells);
                    if (problems.size() == before) {
                        rows.add(read);
                    }
                }
            }
        }
        return rows;
    }

    /** The table as text, headings first. */
    public String write(List<R> rows) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(headings());
        for (R row : rows) {
            lines.add(columns.stream().map(c -> c.text(row)).toList());
        }
        return CsvText.of(lines);
    }
}
