package org.rafterbook.ui.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.exchange.ColumnRule;
import org.rafterbook.exchange.ImportProblem;
import org.rafterbook.flight.Ending;
import org.rafterbook.logbook.Mode;
import org.rafterbook.power.Wind;
import org.rafterbook.ui.ChosenFiles;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.WaitingBackground;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.ui.look.Look;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Shell;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.Book;
import org.rafterbook.work.ImportDraft.Column;
import org.rafterbook.work.Progress;
import org.rafterbook.work.Season.Flown;

/** A flyer's own table on its way in, by keyboard, into a real logbook. */
@FxTest
class ImportPlaceTest {

    private static final String CLUB = """
            Datum;Flieger;Zeit;Kurbel;Anstellwinkel;Farbe;Ende;Remarks
            28.10.2025;Teasel;8:41;132;2,5;rot;sauber;steady
            28.10.2025;Teasel;9:02;134;2,5;rot;sauber;
            4.11.2025;Teasel;8:47;134;3,0;rot;Balken;beams
            """;

    @TempDir
    Path folder;

    private final Errors errors = new Errors();
    private final ChosenFiles dialogs = new ChosenFiles();
    private final Tools tools = new Tools(errors, new Look(), FxBackground.onTheSpot(errors), dialogs);
    private Book book;
    private ImportPlace place;
    private Stage stage;
    private boolean left;

    @BeforeEach
    void open() {
        book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, OneEvening.CLOCK);
        place = new ImportPlace(tools, book, DisplayUnits.METRIC, () -> left = true);
        Map<PlaceId, Supplier<? extends Place>> makers = new EnumMap<>(PlaceId.class);
        for (PlaceId id : PlaceId.values()) {
            makers.put(id, () -> place);
        }
        stage = Fx.window(new Shell(tools, makers));
    }

    @AfterEach
    void close() {
        stage.close();
        book.close();
    }

    private Path write(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void choose(String name, String text) {
        dialogs.then(write(name, text));
        key(KeyCode.O, "o");
    }

    private Scene scene() {
        return stage.getScene();
    }

    private void key(KeyCode code, String typed) {
        Fx.key(scene(), code, typed);
        Fx.layOut(scene());
    }

    private void type(String text) {
        text.chars().forEach(c -> key(KeyCode.UNDEFINED, String.valueOf((char) c)));
    }

    private boolean shows(String text) {
        return scene().getRoot().lookupAll("*").stream()
                .filter(node -> inSight(node))
                .anyMatch(node -> node instanceof Labeled l
                        && l.getText() != null
                        && l.getText().contains(text));
    }

    private static boolean inSight(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }

    @SuppressWarnings("unchecked")
    private <T> TableView<T> table(String says) {
        return (TableView<T>) scene().getRoot().lookupAll(".table-view").stream()
                .filter(node -> says.equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow();
    }

    private List<Column> columns() {
        return this.<Column>table("columns of the tables").getItems();
    }

    private List<ImportProblem> problems() {
        TableView<ImportProblem> table = table("problems");
        return inSight(table) ? table.getItems() : List.of();
    }

    /** Picks a column by its heading, opens a choice by its key and chooses. */
    private void say(String heading, KeyCode choice, String letter, String label) {
        TableView<Column> table = table("columns of the tables");
        table.requestFocus();
        table.getSelectionModel()
                .select(columns().stream()
                        .filter(c -> c.heading().equals(heading))
                        .findFirst()
                        .orElseThrow());
        Fx.layOut(scene());
        key(choice, letter);
        choose(label);
    }

    /** Chooses in the list that has the focus. */
    @SuppressWarnings("unchecked")
    private void choose(String label) {
        ComboBox<Object> box = (ComboBox<Object>) Objects.requireNonNull(scene().getFocusOwner());
        Object wanted = box.getItems().stream()
                .filter(item -> box.getConverter().toString(item).equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " is not offered"));
        box.hide();
        box.getSelectionModel().select(wanted);
        Fx.layOut(scene());
    }

    private void sayTheClubs() {
        say("Datum", KeyCode.B, "b", "day of the session");
        say("Flieger", KeyCode.B, "b", "model's name");
        say("Zeit", KeyCode.B, "b", "time aloft");
        say("Kurbel", KeyCode.B, "b", "turns put in");
        say("Kurbel", KeyCode.U, "u", ColumnRule.WINDER_TURNS);
        say("Anstellwinkel", KeyCode.B, "b", "a setting of my own");
        key(KeyCode.N, "n");
        type("incidence");
        key(KeyCode.ENTER, "\r");
        say("Anstellwinkel", KeyCode.U, "u", "°");
        say("Farbe", KeyCode.B, "b", "left out");
        say("Ende", KeyCode.B, "b", "how it ended");
    }

    @Test
    void headingsThatSpeakForThemselvesNeedNoAnswer() {
        choose("club.csv", CLUB);
        assertThat(columns()).extracting(Column::heading).startsWith("Datum", "Flieger", "Zeit");
        assertThat(columns().get(7).rule()).isEqualTo(new ColumnRule("Remarks", "notes", null));
        assertThat(shows("7 of 8 to be said")).isTrue();
        assertThat(shows("Say first what Datum, Flieger, Zeit, Kurbel, Anstellwinkel, Farbe, Ende are"))
                .isTrue();
    }

    @Test
    void anOwnTableIsExplainedAndReadInByKeyboard() {
        choose("club.csv", CLUB);
        sayTheClubs();
        assertThat(problems()).extracting(ImportProblem::column).contains("Kurbel", "Ende");
        assertThat(problems()).extracting(ImportProblem::line).contains(2, 4);

        key(KeyCode.W, "w");
        type("15");
        key(KeyCode.ENTER, "\r");
        say("Ende", KeyCode.B, "b", "how it ended");
        means("sauber", "clean");
        means("balken", "touched");
        assertThat(problems()).isEmpty();
        assertThat(shows("Would be added: 3 flights")).isTrue();

        key(KeyCode.K, "k");
        type("club table");
        key(KeyCode.ENTER, "\r");
        assertThat(book.season().load(null, Progress.none()).season().flights())
                .as("Enter in a field reads nothing in")
                .isEmpty();
        key(KeyCode.ENTER, "\r");

        List<Flown> flown = book.season().load(null, Progress.none()).season().flights();
        assertThat(flown).extracting(Flown::durationS).containsExactly(521.0, 542.0, 527.0);
        assertThat(flown).extracting(Flown::version).containsExactly("t1", "t1", "t2");
        assertThat(book.motors().load().motors()).isEmpty();
        assertThat(shows("Added: 3 flights")).isTrue();
        assertThat(book.imports().mappings()).singleElement().satisfies(mapping -> {
            assertThat(mapping.name()).isEqualTo("club table");
            assertThat(mapping.winderRatio()).isEqualTo(15);
            assertThat(mapping.datePattern()).isEqualTo("d.M.yyyy");
        });
        key(KeyCode.ENTER, "\r");
        assertThat(left).isTrue();
    }

    private void means(String word, String known) {
        ComboBox<?> box = (ComboBox<?>) scene().getRoot().lookupAll(".combo-box").stream()
                .filter(node -> ("“" + word + "” means").equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow();
        box.requestFocus();
        choose(known);
    }

    @Test
    void aTableWithKeptHeadingsNeedsNoMore() {
        anOwnTableIsExplainedAndReadInByKeyboard();
        choose("next.csv", CLUB.replace("28.10.2025;Teasel;8:41", "11.11.2025;Teasel;9:44"));
        assertThat(shows("8 columns, all said")).isTrue();
        assertThat(shows("Would be added: 1 flight")).isTrue();
        key(KeyCode.ENTER, "\r");
        assertThat(book.season().load(null, Progress.none()).season().flights()).hasSize(4);
        assertThat(shows("2 flights were there already.")).isTrue();
    }

    @Test
    void theSameFileAgainAddsNothing() {
        String own = "model,session_date,duration_s\nTeasel,2025-10-28,521\n";
        choose("own.csv", own);
        key(KeyCode.ENTER, "\r");
        choose("own.csv", own);
        assertThat(shows("Nothing was added: the flight is there already.")).isTrue();
    }

    @Test
    void oneWrongRowRefusesAllWithFileLineAndColumn() {
        choose("own.csv", "model,session_date,duration_s\nTeasel,2025-10-28,521\nTeasel,2025-10-29,soon\n");
        assertThat(problems()).singleElement().satisfies(problem -> {
            assertThat(problem.file()).isEqualTo("own.csv");
            assertThat(problem.line()).isEqualTo(3);
            assertThat(problem.column()).isEqualTo("duration_s");
        });
        key(KeyCode.ENTER, "\r");
        assertThat(book.isEmpty()).isTrue();
        TableView<ImportProblem> wrong = table("problems");
        wrong.getSelectionModel().select(0);
        assertThat(Objects.requireNonNull(this.<Column>table("columns of the tables")
                                .getSelectionModel()
                                .getSelectedItem())
                        .heading())
                .isEqualTo("duration_s");
    }

    @Test
    void whichOfDayAndMonthComesFirstIsAskedWhereTheTableLeavesItOpen() {
        choose("own.csv", "model,date,time\nTeasel,4/11/2025,521\n");
        assertThat(shows("Say which comes first: day or month.")).isTrue();
        key(KeyCode.D, "d");
        choose("28/10/2025");
        assertThat(problems()).isEmpty();
        key(KeyCode.ENTER, "\r");
        assertThat(book.season()
                        .load(null, Progress.none())
                        .season()
                        .flights()
                        .get(0)
                        .date())
                .isEqualTo("2025-11-04");
    }

    @Test
    void aTableOfOneModelIsGivenItsName() {
        choose("own.csv", "date,time\n2025-11-04,521\n");
        assertThat(problems())
                .singleElement()
                .satisfies(p -> assertThat(p.sentence()).contains("no column is model"));
        key(KeyCode.M, "m");
        type("Marram");
        key(KeyCode.ENTER, "\r");
        assertThat(problems()).isEmpty();
        key(KeyCode.ENTER, "\r");
        assertThat(book.season()
                        .load(null, Progress.none())
                        .season()
                        .flights()
                        .get(0)
                        .model())
                .isEqualTo("Marram");
    }

    @Test
    void aColumnCanBeASettingOfTheSheetChosenWithIt() {
        dialogs.then(
                write("own.csv", "model,date,time,Wing\nTeasel,2025-11-04,521,70\nTeasel,2025-11-04,531,72\n"),
                Path.of("sample-data", "teasel.json"));
        key(KeyCode.O, "o");
        say("Wing", KeyCode.B, "b", "a setting of the airframe sheet");
        say("Wing", KeyCode.S, "s", "wing.edge_aft_mm");
        assertThat(problems()).isEmpty();
        key(KeyCode.ENTER, "\r");
        assertThat(book.season().load(null, Progress.none()).season().flights())
                .extracting(Flown::version)
                .doesNotHaveDuplicates();
        assertThat(book.season().load(null, Progress.none()).season().flights())
                .extracting(Flown::margin)
                .doesNotContainNull();
    }

    @Test
    void decimalCommasCanBeSaidWhereTheTableLeavesThemOpen() {
        choose("own.csv", "model;date;time;turns\nTeasel;2025-11-04;521;1,980\n");
        assertThat(problems()).isNotEmpty();
        scene().getRoot().lookupAll(".toggle-button").stream()
                .filter(node -> "2,5".equals(((Labeled) node).getText()))
                .forEach(node -> ((ToggleButton) node).fire());
        Fx.layOut(scene());
        assertThat(problems()).isEmpty();
    }

    @Test
    void aFileThatCannotBeReadIsSaidAndNothingElseIsLost() {
        choose("own.csv", "model,date,time\nTeasel,2025-11-04,521\n");
        dialogs.then(folder.resolve("not-there.csv"));
        key(KeyCode.O, "o");
        assertThat(errors.shownProperty().get()).isNotNull();
        assertThat(columns()).hasSize(3);
    }

    @Test
    void windsFromWinderTurnsAreMotorTurns() {
        choose("own.csv", "model,date,time,turns,motor\nTeasel,2025-11-04,521,132,M1\n");
        say("turns", KeyCode.U, "u", ColumnRule.WINDER_TURNS);
        key(KeyCode.W, "w");
        type("15");
        key(KeyCode.ENTER, "\r");
        key(KeyCode.ENTER, "\r");
        assertThat(book.motors().load().motors())
                .singleElement()
                .satisfies(boxed ->
                        assertThat(boxed.winds()).extracting(Wind::turnsWound).containsExactly(1980.0));
    }

    @Test
    void anEndingOfTheProgramsOwnNeedsNoMeaning() {
        choose("own.csv", "model,date,time,ending\nTeasel,2025-11-04,521,touched\n");
        key(KeyCode.ENTER, "\r");
        assertThat(book.season().load(null, Progress.none()).season().flights()).hasSize(1);
        assertThat(Ending.TOUCHED.word()).isEqualTo("touched");
    }

    @Test
    void aSecondEnterWhileTheFilesAreBeingReadInDoesNothing() {
        WaitingBackground waiting = new WaitingBackground();
        TakingIn taking = new TakingIn(
                book.imports(), new FxBackground(waiting, Runnable::run, errors), new ProgressRule(), errors::show);
        taking.take(List.of(write("t.csv", "model,session_date,duration_s\nTeasel,2025-10-28,521\n")));
        waiting.run();
        assertThat(taking.readingProperty().get()).isNotNull();
        int[] kept = new int[1];
        book.onChange(() -> kept[0]++);
        taking.carryOut("");
        assertThat(taking.keepingProperty().get()).isTrue();
        taking.carryOut("");
        waiting.run();
        assertThat(kept[0]).isEqualTo(1);
        assertThat(taking.keepingProperty().get()).isFalse();
        assertThat(Objects.requireNonNull(taking.doneProperty().get()).sentences())
                .anyMatch(sentence -> sentence.startsWith("Added: 1 flight"));
    }

    @Test
    void turnsAndTorqueStandInTheRowsAndWhatIsOutOfLineIsToldWithItsLine() {
        StringBuilder table = new StringBuilder("model,session_date,duration_s,turns_wound,launch_torque_nmm\n");
        for (int i = 0; i < 6; i++) {
            table.append("Teasel,2025-10-28,").append(500 + i).append(",1380,1.8\n");
        }
        choose("t.csv", table + "Teasel,2025-10-28,510,1390,18\n");
        assertThat(shows("1.8")).isTrue();
        assertThat(shows("1380")).isTrue();
        assertThat(shows("18.0 N·mm; usual for this model is 1.8 N·mm. Is the unit right?"))
                .isTrue();
        assertThat(shows("Read in 7 flights")).isTrue();
    }
}
