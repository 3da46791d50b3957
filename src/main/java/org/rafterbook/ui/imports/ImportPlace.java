package org.rafterbook.ui.imports;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.Observable;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.FlightField;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.EmptyBox;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.FittingFrame;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.shell.Dialogs;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.Counted;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.Book;
import org.rafterbook.work.ImportDraft.Column;

/** Reads tables and airframe sheets into the logbook: what each column is, the rows as read, then all or none. */
public final class ImportPlace implements Place {

    private static final Dialogs.FileKind TABLES =
            new Dialogs.FileKind("Tables and airframe sheets", List.of("*.csv", "*.tsv", "*.txt", "*.json"));

    /** Narrower than this, columns and rows take turns. */
    private static final double NARROW_EM = 72;

    private final Dialogs dialogs;
    private final Runnable leave;
    private final TakingIn taking;
    private final ColumnsSheet columns;
    private final WritingForm writing;
    private final ReadSheet read;
    private final Field<String> keepAs =
            Field.words("Keep what the columns are, for next time, as").prompt("such as club table");
    private final Action carryOut;
    private final Button toColumns;
    private final Button toRows;
    private final ReadOnlyObjectWrapper<Keys> keys;
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("Read in");
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final FittingFrame frame = new FittingFrame((widthEm, heightEm, emPx) -> fit(widthEm < NARROW_EM));
    private final Sheet right = new Sheet();
    private final HBox page;
    private final VBox nothing;
    private final VBox ended = Lay.styled(Lay.column(12), "page");
    private boolean narrow;
    private boolean rowsInFront;

    /**
     * @param leave goes back to where the flyer came from
     */
    public ImportPlace(Tools tools, Book book, DisplayUnits units, Runnable leave) {
        read = new ReadSheet(units, this::pick);
        this.dialogs = tools.dialogs();
        this.leave = leave;
        ProgressRule progress = new ProgressRule();
        taking = new TakingIn(book.imports(), tools.background(), progress, tools.errors()::show);
        Keys own = tools.keys();
        Action choose = own.on("O", "Choose files", this::choose);
        carryOut = own.on("Enter", "Read in", this::enter);
        columns = new ColumnsSheet(taking, own);
        writing = new WritingForm(taking, own, columns::focus);
        toColumns = Buttons.secondary(own.on("L", "Columns", () -> toFront(false, columns::focus)));
        toRows = Buttons.secondary(own.on("R", "Rows as read", () -> toFront(true, read::focus)));
        keepAs.key(own.on("K", "Keep what the columns are", keepAs::edit));
        own.on("Esc", "Back", this::escape);
        own.hint("O", "choose files");
        own.hint("↑ ↓", "pick a column");
        own.hint("B U", "what it is, its unit");
        own.hint("Enter", "read in");
        own.hint("Esc", "back");
        keys = new ReadOnlyObjectWrapper<>(own);
        page = page(progress);
        nothing = Lay.styled(
                Lay.column(
                        0,
                        new EmptyBox(
                                "No files chosen.",
                                "A table of flights with headings of your own, tables this program wrote, airframe"
                                        + " sheets; several at once are read together, all or none.",
                                choose)),
                "page");
        StackPane all = new StackPane(page, nothing, ended);
        frame.show(all);
        taking.columns().addListener((Observable changed) -> showColumns());
        taking.readingProperty().subscribe(this::showReading);
        taking.doneProperty().subscribe(this::showDone);
        taking.keepingProperty()
                .subscribe(now -> showReading(taking.readingProperty().get()));
        showFront();
    }

    private HBox page(ProgressRule progress) {
        right.section("How it is written", "").beside(toColumns);
        columns.beside(toRows);
        right.getChildren().add(writing);
        Lay.grow(right.add(read.node()));
        VBox foot = Lay.styled(Lay.column(8, keepAs, progress, Buttons.main(carryOut)), "section");
        right.add(foot);
        right.setMinSize(0, 0);
        right.setMaxHeight(Double.MAX_VALUE);
        columns.node().setMaxHeight(Double.MAX_VALUE);
        HBox row = Lay.styled(Lay.row(12, Lay.grow(columns.node()), Lay.grow(right)), "page");
        row.setFillHeight(true);
        columns.node().setPrefWidth(1);
        right.setPrefWidth(1);
        return row;
    }

    /** Has the flyer choose files, as on coming here. */
    public void choose() {
        List<Path> chosen = dialogs.openSeveral("Tables of flights, motors, venues, or airframe sheets", TABLES);
        if (!chosen.isEmpty()) {
            taking.take(chosen);
        }
    }

    /** Goes to the column that is this field, or has this heading. */
    private void pick(String heading) {
        Column column = FlightField.of(heading).map(taking::columnOf).orElse(null);
        columns.pick(column == null ? heading : column.heading());
    }

    private void enter() {
        if (frame.getScene() != null && frame.getScene().getFocusOwner() instanceof TextInputControl) {
            columns.focus(); // the field has kept its value; Enter in it does not read everything in
        } else if (taking.doneProperty().get() != null) {
            leave.run();
        } else {
            taking.carryOut(keepAs.typed());
        }
    }

    private void escape() {
        if (frame.getScene() != null && frame.getScene().getFocusOwner() instanceof TextInputControl) {
            columns.focus();
        } else {
            leave.run();
        }
    }

    private void showColumns() {
        columns.show();
        columns.show(taking.readingProperty().get());
        writing.fit();
        read.waitFor(taking.open());
        showFront();
    }

    private void showReading(TakingIn.@Nullable Reading reading) {
        columns.show(reading);
        read.show(reading);
        read.waitFor(taking.open());
        writing.fit();
        boolean sound =
                reading != null && reading.sound() && !taking.keepingProperty().get();
        carryOut.enabledProperty().set(sound || taking.doneProperty().get() != null);
        int flights = reading == null ? 0 : reading.summary().flights();
        carryOut.labelProperty().set(sound && flights > 0 ? "Read in " + Counted.of(flights, "flight") : "Read in");
        showFront();
    }

    private void showDone(TakingIn.@Nullable Done done) {
        ended.getChildren().clear();
        if (done != null) {
            Sheet sheet = new Sheet();
            VBox words = Lay.styled(Lay.column(8, Words.head("Read in.")), "offer-head");
            done.sentences().forEach(sentence -> words.getChildren().add(Words.prose(sentence)));
            words.getChildren().add(Words.prose("Season (F5) shows them; Ctrl+Z takes all of it back in one."));
            sheet.add(words);
            sheet.section(Lay.row(8, Buttons.primary(carryOut)));
            ended.getChildren().add(sheet);
            keepAs.fill("");
            carryOut.enabledProperty().set(true);
            carryOut.labelProperty().set("Go back");
        }
        showFront();
    }

    private void showFront() {
        boolean any = !taking.files().isEmpty();
        boolean over = taking.doneProperty().get() != null;
        Lay.show(page, any);
        Lay.show(ended, over);
        Lay.show(nothing, !any && !over);
        Lay.show(columns.node(), !narrow || !rowsInFront);
        Lay.show(right, !narrow || rowsInFront);
        Lay.show(toColumns, narrow);
        Lay.show(toRows, narrow);
        subtitle.set(any ? "tables and airframe sheets, all or none" : "");
    }

    private void fit(boolean now) {
        narrow = now;
        showFront();
    }

    private void toFront(boolean rows, Runnable focus) {
        rowsInFront = rows;
        showFront();
        focus.run();
    }

    @Override
    public Node node() {
        return frame;
    }

    @Override
    public ObservableValue<Keys> keys() {
        return keys.getReadOnlyProperty();
    }

    @Override
    public ObservableValue<String> title() {
        return title.getReadOnlyProperty();
    }

    @Override
    public ObservableValue<String> subtitle() {
        return subtitle.getReadOnlyProperty();
    }

    @Override
    public void shown() {
        taking.said();
    }

    @Override
    public void hidden() {
        taking.stop();
    }
}
