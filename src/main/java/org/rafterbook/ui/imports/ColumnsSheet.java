package org.rafterbook.ui.imports;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.kit.ToDo;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Counted;
import org.rafterbook.work.ImportDraft.Column;
import org.rafterbook.work.ImportFile;

/** The files, the headings of their tables with what each column is, and the form for the one picked. */
final class ColumnsSheet {

    private final TakingIn taking;
    private final Table<Column> table = new Table<>("columns of the tables");
    private final ColumnForm form;
    private final VBox files = Lay.column(4);
    private final Sheet sheet = new Sheet();
    private final Sheet.Section ofFiles;
    private final Sheet.Section columns;

    ColumnsSheet(TakingIn taking, Keys keys) {
        this.taking = taking;
        this.form = new ColumnForm(taking, keys, this::focus);
        table.text("heading", 9, Column::heading);
        table.text("begins with", 9, column -> String.join(", ", column.samples()))
                .styled("quiet");
        table.node("what it is", 15, ColumnsSheet::becomes).grow();
        table.text("unit", 6, column -> Becoming.unit(column.rule()));
        table.ifEmpty("No table of flights among the files.");
        table.selectedProperty().subscribe(form::show);
        ofFiles = sheet.section("Files", "", files);
        columns = sheet.section("What each column is", "", Lay.grow(table));
        Lay.grow(columns);
        columns.setMinHeight(0);
        sheet.add(form);
        sheet.setMinSize(0, 0);
    }

    private static Node becomes(Column column) {
        return column.rule() == null ? new ToDo(Becoming.words(null)) : Words.body(Becoming.words(column.rule()));
    }

    Sheet node() {
        return sheet;
    }

    /** Puts something at the right of the caption. */
    void beside(Node node) {
        ofFiles.beside(node);
    }

    /** Goes to the list of columns. */
    void focus() {
        table.view().requestFocus();
    }

    /** Shows the columns as they are by now; the one picked stays picked. */
    void show() {
        Column before = table.selected();
        int index = table.view().getSelectionModel().getSelectedIndex();
        List<Column> now = taking.columns();
        table.rows(now);
        if (!now.isEmpty()) {
            boolean same = before != null
                    && index >= 0
                    && index < now.size()
                    && now.get(index).heading().equals(before.heading());
            table.view().getSelectionModel().select(same ? index : firstOpen(now));
        }
        long open = now.stream().filter(c -> c.rule() == null).count();
        columns.aside(open == 0 ? now.size() + " columns, all said" : open + " of " + now.size() + " to be said");
    }

    private static int firstOpen(List<Column> columns) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).rule() == null) {
                return i;
            }
        }
        return 0;
    }

    /** Says what each file was taken for. */
    void show(TakingIn.@Nullable Reading reading) {
        Map<String, String> read = new HashMap<>();
        if (reading != null) {
            read.putAll(reading.plan().read());
            reading.plan()
                    .flightTables()
                    .forEach(table ->
                            read.put(table.file(), Counted.of(table.rows().size(), "flight")));
        }
        files.getChildren().clear();
        for (ImportFile file : taking.files()) {
            Label name = Words.bold(file.name());
            files.getChildren().add(Lay.baseline(8, name, Words.aside(read.getOrDefault(file.name(), ""))));
        }
    }

    /** Picks the column of this heading. */
    void pick(String heading) {
        taking.columns().stream()
                .filter(column -> column.heading().equalsIgnoreCase(heading))
                .findFirst()
                .ifPresent(table::select);
    }
}
