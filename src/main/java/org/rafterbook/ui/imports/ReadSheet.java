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
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.exchange.FlightTable;
import org.rafterbook.exchange.ImportProblem;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.QuantityFormat;

/** The rows as they would be read, or what is wrong with the files, with file, line and column. */
final class ReadSheet {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private final Table<FlightRow> rows = new Table<>("rows as they would be read");
    private final Table<ImportProblem> problems = new Table<>("problems");
    private final Label says = Words.prose("");
    private final Sheet.Section section;

    ReadSheet() {
        rows.number("line", "", 3.6, row -> String.valueOf(row.line()));
        rows.text("day", 7.4, row -> DAY.format(row.date()));
        rows.text("model", 7, FlightRow::model);
        rows.number("time", "", 4.6, ReadSheet::time);
        rows.text("ended", 5.6, row -> row.ending() == null ? "" : row.ending().word());
        rows.text("settings and notes", 10, ReadSheet::rest).grow();
        problems.number("line", "", 3.6, p -> p.line() == 0 ? "" : String.valueOf(p.line()));
        problems.text("column", 9, p -> p.column() == null ? "" : p.column());
        problems.node("what is wrong", 20, ReadSheet::sentence).grow();
        problems.rowHeight(3.4);
        says.setMinHeight(Label.USE_PREF_SIZE);
        StackPane either = Lay.grow(new StackPane(rows, problems));
        either.setMinHeight(0);
        section = Lay.grow(new Sheet.Section("As it would be read", "", says, either));
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

    /** Called with the heading of the column that the picked problem is in. */
    void onProblem(Consumer<String> taker) {
        problems.selectedProperty().subscribe(problem -> {
            if (problem != null && problem.column() != null) {
                taker.accept(problem.column());
            }
        });
    }

    /** Says which columns somebody has to explain before there are rows. */
    void waitFor(List<String> headings) {
        if (!headings.isEmpty()) {
            Lay.show(problems, false);
            Lay.show(rows, false);
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
        section.caption(wrong.isEmpty() ? "As it would be read" : "What is wrong");
        section.aside(wrong.isEmpty() ? read.size() + " flights" : wrong.size() + " in all; nothing is read in");
        says.setText(wrong.isEmpty() ? String.join(" ", reading.summary().ahead()) : files(wrong));
    }

    /** The files that the problems are in. */
    private static String files(List<ImportProblem> wrong) {
        StringJoiner files = new StringJoiner(", ");
        wrong.stream().map(ImportProblem::file).distinct().forEach(files::add);
        return files.toString();
    }
}
