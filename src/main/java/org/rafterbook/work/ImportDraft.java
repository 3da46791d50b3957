package org.rafterbook.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.exchange.AirframeSheets;
import org.rafterbook.exchange.ColumnRule;
import org.rafterbook.exchange.CsvTable;
import org.rafterbook.exchange.CsvTables;
import org.rafterbook.exchange.FlightField;
import org.rafterbook.exchange.Mapping;
import org.rafterbook.exchange.MappingProposal;
import org.rafterbook.exchange.SideTables;
import org.rafterbook.units.DecimalMark;
import org.rafterbook.units.UserError;

/**
 * What there is to say before files are read in: the headings of their tables of flights, each with what it seems to be.
 *
 * @param columns every heading once, in the order of the tables
 * @param fixed what holds for every row, keyed by heading of a field
 * @param winderRatio motor turns for one turn of the handle, null where nothing says
 * @param datePattern how days are written, null where nothing says
 * @param sheetSettings the numbers of airframe sheets that a column can be, such as {@code wing.edge_aft_mm}
 */
public record ImportDraft(
        List<ImportFile> files,
        List<Column> columns,
        Map<String, String> fixed,
        DecimalMark mark,
        @Nullable Double winderRatio,
        @Nullable String datePattern,
        Set<String> sheetSettings) {

    /**
     * One column of the flyer's tables.
     *
     * @param cells what stands in it, without the empty ones
     * @param rule what it seems to be, null where somebody has to say
     */
    public record Column(
            String heading, List<String> cells, @Nullable ColumnRule rule) {

        /** The same column by another rule. */
        public Column by(@Nullable ColumnRule other) {
            return new Column(heading, cells, other);
        }

        /** The first few different cells. */
        public List<String> samples() {
            return cells.stream().distinct().limit(3).toList();
        }
    }

    static ImportDraft of(List<ImportFile> files, List<Mapping> remembered, List<Airframe> known) {
        Map<String, Column> columns = new LinkedHashMap<>();
        Map<String, String> fixed = new HashMap<>();
        DecimalMark mark = DecimalMark.EITHER;
        Double ratio = null;
        String pattern = null;
        List<Airframe> airframes = new ArrayList<>(known);
        for (ImportFile file : files) {
            if (file.isJson()) {
                addSheet(file, airframes);
                continue;
            }
            CsvTable table = tableOf(file);
            if (table != null) {
                Mapping mapping = MappingProposal.certain(table, remembered)
                        .orElseGet(() -> MappingProposal.draft(table, MappingProposal.OWN));
                add(table, mapping, columns);
                fixed.putAll(mapping.fixed());
                mark = mapping.mark() == DecimalMark.EITHER ? mark : mapping.mark();
                ratio = mapping.winderRatio() == null ? ratio : mapping.winderRatio();
                pattern = mapping.datePattern() == null ? pattern : mapping.datePattern();
            }
        }
        return new ImportDraft(files, List.copyOf(columns.values()), fixed, mark, ratio, pattern, settings(airframes));
    }

    /** The file's table of flights, null where it is something else or cannot be read, which reading it will tell. */
    private static @Nullable CsvTable tableOf(ImportFile file) {
        try {
            CsvTable table = CsvTables.parse(file.text(), file.name());
            return SideTables.formOf(table).isPresent() ? null : table;
        } catch (UserError unreadable) {
            return null;
        }
    }

    private static void addSheet(ImportFile file, List<Airframe> airframes) {
        try {
            airframes.add(AirframeSheets.read(file.text(), file.name()).airframe());
        } catch (UserError unreadable) {
            return; // reading it will tell
        }
    }

    private static void add(CsvTable table, Mapping mapping, Map<String, Column> columns) {
        for (int i = 0; i < table.headings().size(); i++) {
            String heading = table.headings().get(i);
            int index = i;
            List<String> cells = table.rows().stream()
                    .map(row -> row.cells().get(index))
                    .filter(cell -> !cell.isEmpty())
                    .toList();
            columns.merge(
                    heading.toLowerCase(Locale.ROOT),
                    new Column(heading, cells, mapping.rule(heading).orElse(null)),
                    ImportDraft::both);
        }
    }

    private static Column both(Column a, Column b) {
        List<String> cells = new ArrayList<>(a.cells());
        cells.addAll(b.cells());
        return new Column(a.heading(), cells, a.rule() == null ? b.rule() : a.rule());
    }

    private static Set<String> settings(List<Airframe> airframes) {
        Set<String> paths = new TreeSet<>();
        for (Airframe airframe : airframes) {
            for (SheetPath.Key key : SheetPath.Key.values()) {
                airframe.surfaces().forEach(s -> add(new SheetPath(s.name(), key), airframe, paths));
                airframe.masses().forEach(m -> add(new SheetPath(m.name(), key), airframe, paths));
            }
        }
        return paths;
    }

    private static void add(SheetPath path, Airframe airframe, Set<String> paths) {
        if (path.isIn(airframe)) {
            paths.add(path.toString());
        }
    }

    /** The column that is a field by these rules, null where none is. */
    public static @Nullable Column columnOf(FlightField field, List<Column> columns) {
        return columns.stream()
                .filter(c -> c.rule() != null && c.rule().field() == field)
                .findFirst()
                .orElse(null);
    }
}
