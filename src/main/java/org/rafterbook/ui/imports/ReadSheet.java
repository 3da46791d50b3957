package org.rafterbook.ui.imports;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.exchange.FlightTable;
import org.rafterbook.exchange.ImportProblem;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.Counted;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.ImportDoubt;

/** The rows as they would be read with what looks out of line, or what is wrong with the files, with line and column. */
final class ReadSheet {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private final Table<FlightRow> rows = new Table<>("rows as they would be read");
    private final Table<ImportDoubt> doubts = new Table<>("figures to look at");
    private final Table<ImportProblem> problems = new Table<>("problems");
    private final Label says = Words.prose("");
    private final VBox doubted;
    private final Sheet.Section section;

    /** @param picked given the heading of the column, or the field, that a picked problem or doubt is about */
    ReadSheet(DisplayUnits units, Consumer<String> picked) {
        QuantityFormat format = new QuantityFormat(units);
        rows.number("line", "", 3, row -> String.valueOf(row.line()));
        rows.text("day", 7.4, row -> DAY.format(row.date()));
        rows.text("model", 5.4, FlightRow::model);
        rows.number("time", "", 4, ReadSheet::time);
        rows.number(
                "turns", "", 4, row -> format.number(Quantity.TURNS, row.wind().turnsWound()));
        rows.number(
                "torque",
                format.unitOf(Quantity.TORQUE),
                4.4,
                row -> format.number(Quantity.TORQUE, row.wind().launchTorqueNm()));
        rows.text("ended", 4.6, row -> row.ending() == null ? "" : row.ending().word());
        rows.text("settings and notes", 7, ReadSheet::rest).grow();
        problems.number("line", "", 3.6, p -> p.line() == 0 ? "" : String.valueOf(p.line()));
        problems.text("column", 9, p -> p.column() == null ? "" : p.column());
        problems.node("what is wrong", 20, ReadSheet::sentence).grow();
        problems.rowHeight(3.4);
        doubts.number("line", "", 3, d -> String.valueOf(d.line()));
        doubts.text("column", 9.8, d -> d.field().meaning());
        doubts.node("look at", 16, d -> Words.prose(d.sentence(format))).grow();
        doubts.rowHeight(2.6).asHighAsItsRows(4);
        doubts.selectedProperty().subscribe(doubt -> {
            if (doubt != null) {
                rows.rows().stream()
                        .filter(row -> row.line() == doubt.line())
                        .findFirst()
                        .ifPresent(rows::select);
                picked.accept(doubt.field().heading());
            }
        });
        problems.selectedProperty().subscribe(problem -> {
            if (problem != null && problem.column() != null) {
                picked.accept(problem.column());
            }
        });
        doubted = Lay.column(4, Words.caption("Out of line; taken in all the same unless you put it right"), doubts);
        says.setMinHeight(Label.USE_PREF_SIZE);
        StackPane either = Lay.grow(new StackPane(rows, problems));
        either.setMinHeight(0);
        section = Lay.grow(new Sheet.Section("As it would be read", "", says, doubted, either));
    }

    Node node() {
        return section;
    }

    private static String time(FlightRow row) {
        Double seconds = row.durationS();
        return seconds == null ? QuantityFormat.UNKNOWN : ClockTime.minutesSeconds(seconds);
    }

    private static String rest(FlightRow row) {
        StringJoiner words = new StringJoiner(", ");
        new TreeMap<>(row.settings()).forEach((name, value) -> words.add(name + " " + value));
        if (row.notes() != null) {
            words.add("“" + row.notes() + "”");
        }
        return words.toString();
    }

    private static Node sentence(ImportProblem problem) {
        return Words.prose(problem.sentence());
    }

    /** Goes to the rows, or to what is wrong. */
    void focus() {
        (problems.isVisible() ? problems : rows).view().requestFocus();
    }

    /** Says which columns somebody has to explain before there are rows. */
    void waitFor(List<String> headings) {
        if (!headings.isEmpty()) {
            Lay.show(problems, false);
            Lay.show(rows, false);
            Lay.show(doubted, false);
            section.caption("As it would be read");
            section.aside("");
            says.setText("Say first what " + String.join(", ", headings) + (headings.size() == 1 ? " is" : " are")
                    + "; what nobody needs can be left out.");
        }
    }

    /** Shows what was read; null while it is being read. */
    void show(TakingIn.@Nullable Reading reading) {
        if (reading == null) {
            return;
        }
        List<ImportProblem> wrong = reading.plan().problems().isEmpty()
                ? reading.summary().problems()
                : reading.plan().problems();
        List<FlightRow> read = reading.plan().flightTables().stream()
                .map(FlightTable::rows)
                .flatMap(List::stream)
                .toList();
        Lay.show(problems, !wrong.isEmpty());
        Lay.show(rows, wrong.isEmpty());
        problems.rows(wrong);
        rows.rows(wrong.isEmpty() ? read : List.of());
        show(wrong.isEmpty() ? reading.summary().doubts() : List.of());
        section.caption(wrong.isEmpty() ? "As it would be read" : "What is wrong");
        section.aside(
                wrong.isEmpty() ? Counted.of(read.size(), "flight") : wrong.size() + " in all; nothing is read in");
        says.setText(wrong.isEmpty() ? String.join(" ", reading.summary().ahead()) : files(wrong));
    }

    private void show(List<ImportDoubt> found) {
        doubts.rows(found);
        Lay.show(doubted, !found.isEmpty());
    }

    /** The files that the problems are in. */
    private static String files(List<ImportProblem> wrong) {
        StringJoiner files = new StringJoiner(", ");
        wrong.stream().map(ImportProblem::file).distinct().forEach(files::add);
        return files.toString();
    }
}
