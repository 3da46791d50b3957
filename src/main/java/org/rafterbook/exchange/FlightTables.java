package org.rafterbook.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rafterbook.units.DecimalMark;

/** Reads tables of flights by a mapping. */
public final class FlightTables {

    private FlightTables() {}

    /**
     * Reads a table.
     *
     * @param problems takes every problem found; where there is one, nothing of the table may be kept
     * @throws org.rafterbook.units.UserError of bad input where the mapping itself cannot be used
     */
    public static FlightTable read(CsvTable table, Mapping mapping, List<ImportProblem> problems) {
        Map<String, Binding.Bound> columns = new HashMap<>();
        List<Binding.Bound> numbers = new ArrayList<>();
        List<FlightTable.SettingColumn> settings = new ArrayList<>();
        Map<String, Integer> settingIndex = new HashMap<>();
        for (int i = 0; i < table.headings().size(); i++) {
            String heading = table.headings().get(i);
            ColumnRule rule = mapping.rule(heading).orElse(null);
            if (rule == null) {
                problems.add(headingProblem(
                        table,
                        heading,
                        "this column is not known; say what it is, setting.<name> or " + ColumnRule.IGNORE + "."));
                continue;
            }
            Binding.Bound bound = new Binding.Bound(i, heading, rule.unit(), rule.words());
            FlightField field = rule.field();
            String setting = rule.setting();
            if (field != null) {
                if (columns.put(field.heading(), bound) != null) {
                    problems.add(headingProblem(table, heading, "another column is " + field.heading() + " already."));
                }
                if (field.quantity() != null) {
                    numbers.add(bound);
                }
            } else if (setting != null) {
                if (settingIndex.put(setting, i) != null) {
                    problems.add(headingProblem(table, heading, "another column is setting." + setting + " already."));
                }
                settings.add(new FlightTable.SettingColumn(setting, heading, rule.unit()));
                numbers.add(bound);
            }
        }
        for (FlightField field : FlightField.values()) {
            if (field.required()
                    && !columns.containsKey(field.heading())
                    && !mapping.fixed().containsKey(field.heading())) {
                problems.add(new ImportProblem(
                        table.file(),
                        table.headingLine(),
                        null,
                        "no column is " + field.heading() + " (" + field.meaning() + "), which is needed."));
            }
        }
        DecimalMark mark = mapping.mark() == DecimalMark.EITHER ? MarkOfTable.of(table, numbers) : mapping.mark();
        Binding binding = new Binding(
                table, columns, mapping.fixed(), mark, mapping.winderRatio(), DateReader.of(mapping.datePattern()));
        List<FlightRow> rows = new ArrayList<>();
        if (problems.isEmpty()) {
            for (CsvTable.Row row : table.rows()) {
                rows.add(FlightRowReader.read(new Cells(binding, row, problems), texts(row, settingIndex)));
            }
        }
        return new FlightTable(table.file(), mark, settings, rows);
    }

    private static Map<String, String> texts(CsvTable.Row row, Map<String, Integer> settingIndex) {
        Map<String, String> texts = new HashMap<>();
        settingIndex.forEach((name, index) -> {
            String cell = row.cells().get(index);
            if (!cell.isEmpty()) {
                texts.put(name, cell);
            }
        });
        return texts;
    }

    private static ImportProblem headingProblem(CsvTable table, String heading, String sentence) {
        return new ImportProblem(table.file(), table.headingLine(), heading, sentence);
    }
}
