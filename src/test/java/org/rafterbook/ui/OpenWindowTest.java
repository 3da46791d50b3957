package org.rafterbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.flight.Flight;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Mode;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Problem;
import org.rafterbook.ui.hall.RefusingStore;
import org.rafterbook.ui.look.Look;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Theme;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.work.Book;
import org.rafterbook.work.LastLogbook;
import org.rafterbook.work.Progress;
import org.rafterbook.work.Shelf;

/** The window on real files: the first start, one logbook after the other, and what refuses to open. */
@FxTest
class OpenWindowTest {

    @TempDir
    Path folder;

    private final ChosenFiles dialogs = new ChosenFiles();
    private final AtomicReference<String> title = new AtomicReference<>("");
    private Tools tools = Fx.tools();
    private OpenWindow window;
    private Stage stage;

    private Path own() {
        return folder.resolve("Documents").resolve("flights.rafterbook");
    }

    /** Starts as the program does: opens the flyer's own logbook where it is there, shows, makes it where it is not. */
    private void start() {
        Errors errors = new Errors();
        tools = new Tools(errors, new Look(), FxBackground.onTheSpot(errors), dialogs);
        Shelf shelf = new Shelf(
                own(),
                OneEvening.CLOCK,
                new LastLogbook(folder.resolve("settings").resolve("last.txt")));
        window = new OpenWindow(shelf, tools, () -> FxBackground.onTheSpot(errors), title::set, Outset.of(shelf));
        stage = Fx.window(window.shell());
        tools.look().dress(stage.getScene());
        window.makeOwn();
        Fx.layOut(stage.getScene());
    }

    @AfterEach
    void close() {
        if (stage != null) {
            stop();
        }
    }

    private void stop() {
        window.close(() -> {});
        stage.close();
        stage = null;
    }

    private Scene scene() {
        return Objects.requireNonNull(stage).getScene();
    }

    private void key(KeyCode code, String typed) {
        Fx.key(scene(), code, typed);
        Fx.layOut(scene());
    }

    private void control(KeyCode code, boolean shift) {
        Fx.key(scene(), code, "", true, shift);
        Fx.layOut(scene());
    }

    private void type(String text) {
        text.chars().forEach(c -> key(KeyCode.UNDEFINED, String.valueOf((char) c)));
    }

    private boolean shows(String text) {
        return texts(scene().getRoot()).stream().anyMatch(t -> t.contains(text));
    }

    private static List<String> texts(Node node) {
        if (!node.isVisible()) {
            return List.of();
        }
        if (node instanceof Labeled labeled
                && labeled.getText() != null
                && !labeled.getText().isEmpty()) {
            return List.of(labeled.getText());
        }
        if (node instanceof Text text) {
            return List.of(text.getText());
        }
        return node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream()
                        .flatMap(child -> texts(child).stream())
                        .toList()
                : List.of();
    }

    private List<FlightLine> flights(Path file) {
        try (Book book = Book.open(file, Mode.READ_ONLY, OneEvening.CLOCK)) {
            return book.hall().evening().flights();
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A logbook with one batch, closed again. */
    private Path logbook(String name) {
        Path file = folder.resolve(name);
        try (Book book = Book.open(file, Mode.CREATE, OneEvening.CLOCK)) {
            book.motors().addBatch("B " + name);
        }
        return file;
    }

    // ---- First start ----

    @Test
    void theFirstStartMakesTheLogbookAndSaysWhere() {
        start();
        assertThat(own()).exists();
        assertThat(shows("A new logbook, nothing in it yet")).isTrue();
        assertThat(shows("logbook made in")).isTrue();
        assertThat(title.get()).isEqualTo("flights – Rafterbook");
        assertThat(shows("flights")).as("the head names the logbook").isTrue();
    }

    @Test
    void aFlightIsLoggedKnowingOnlyTheModelsName() {
        start();
        key(KeyCode.ENTER, "\r");
        type("Teasel");
        key(KeyCode.ENTER, "\r");
        assertThat(shows("Teasel t1")).as("the Hall, prepared for the model").isTrue();
        key(KeyCode.DIGIT5, "5");
        type("41");
        key(KeyCode.ENTER, "\r");
        stop();
        assertThat(flights(own())).singleElement().satisfies(line -> {
            assertThat(Objects.requireNonNull(line.model()).name()).isEqualTo("Teasel");
            assertThat(line.flight().durationS()).isEqualTo(541);
        });
    }

    @Test
    void spaceTimesAFlightWithoutAModel() {
        start();
        key(KeyCode.SPACE, " ");
        assertThat(shows("Start with my own model")).isFalse();
        key(KeyCode.SPACE, " ");
        stop();
        assertThat(flights(own())).singleElement().satisfies(line -> {
            assertThat(line.model()).isNull();
            assertThat(line.flight().durationS()).isPositive();
        });
    }

    @Test
    void aPressBeforeTheLogbookIsMadeIsNotLost() {
        Errors errors = new Errors();
        tools = new Tools(errors, new Look(), FxBackground.onTheSpot(errors), dialogs);
        Shelf shelf = new Shelf(own(), OneEvening.CLOCK);
        window = new OpenWindow(shelf, tools, () -> FxBackground.onTheSpot(errors), title::set, Outset.NOTHING);
        stage = Fx.window(window.shell());
        key(KeyCode.SPACE, " ");
        window.makeOwn();
        stop();
        assertThat(flights(own()))
                .singleElement()
                .satisfies(line -> assertThat(line.flight().launchedAt()).isNotNull());
    }

    @Test
    void anEmptyNameIsRefusedBesideItsField() {
        start();
        key(KeyCode.DIGIT1, "1");
        key(KeyCode.ENTER, "\r");
        assertThat(shows("This is needed.")).isTrue();
    }

    @Test
    void whatWasEnteredElsewhereEndsTheFirstStart() {
        start();
        stop();
        try (Book book = Book.open(own(), Mode.EXISTING, OneEvening.CLOCK)) {
            book.motors().addBatch("B1");
        }
        start();
        assertThat(shows("A new logbook, nothing in it yet")).isFalse();
        assertThat(shows("Start the watch")).isTrue();
    }

    @Test
    void choicesAreRememberedAtTheNextStart() {
        start();
        control(KeyCode.T, true);
        control(KeyCode.S, true);
        control(KeyCode.S, true);
        key(KeyCode.C, "c");
        type("R. Aldous");
        key(KeyCode.TAB, "");
        scene().getRoot().requestFocus();
        stop();
        start();
        assertThat(tools.look().themeProperty().get()).isEqualTo(Theme.DARK);
        assertThat(tools.look().textSizeProperty().get()).isEqualTo(TextSize.LARGEST);
        assertThat(scene().getRoot().getStyleClass()).contains("text-150");
        assertThat(shows("A new logbook, nothing in it yet"))
                .as("a preference is no entry")
                .isTrue();
        try (Book book = Book.open(own(), Mode.READ_ONLY, OneEvening.CLOCK)) {
            assertThat(book.preference("flyer")).isEqualTo("R. Aldous");
        }
    }

    @Test
    void unitsCanBeChangedLaterAndThePlacesFollow() {
        start();
        key(KeyCode.SPACE, " ");
        key(KeyCode.F3, "");
        assertThat(shows("mm")).isTrue();
        control(KeyCode.U, true);
        assertThat(shows("Name, units, look")).isTrue();
        ComboBox<?> units = (ComboBox<?>) scene().getRoot().lookupAll(".combo-box").stream()
                .filter(box -> "Units on screen".equals(box.getAccessibleText()))
                .findFirst()
                .orElseThrow();
        units.getSelectionModel().selectLast();
        key(KeyCode.ESCAPE, "");
        assertThat(shows("Motor box")).isTrue();
        assertThat(texts(scene().getRoot())).contains("in").doesNotContain("mm");
        stop();
        start();
        key(KeyCode.F3, "");
        assertThat(texts(scene().getRoot())).as("remembered").contains("in");
    }

    // ---- One logbook after the other ----

    @Test
    void theDemoSeasonHasALogbookOfItsOwn() {
        start();
        key(KeyCode.DIGIT3, "3");
        assertThat(tools.showing().get()).isEqualTo(PlaceId.SEASON);
        assertThat(title.get()).isEqualTo("demo-season – Rafterbook");
        assertThat(shows("demo-season")).isTrue();
        control(KeyCode.O, true);
        assertThat(title.get()).isEqualTo("flights – Rafterbook");
        stop();
        try (Book mine = Book.open(own(), Mode.READ_ONLY, OneEvening.CLOCK)) {
            assertThat(mine.season().load(null, Progress.none()).season().flights())
                    .isEmpty();
            assertThat(mine.isEmpty()).isTrue();
        }
        Path demo = own().resolveSibling("demo-season.rafterbook");
        try (Book book = Book.open(demo, Mode.READ_ONLY, OneEvening.CLOCK)) {
            assertThat(book.season().load(null, Progress.none()).season().flights())
                    .hasSizeGreaterThan(200);
        }
    }

    @Test
    void anotherLogbookIsOpenedAndTheOneBeforeClosed() {
        Path other = logbook("other.rafterbook");
        start();
        dialogs.then(other);
        key(KeyCode.O, "o");
        assertThat(title.get()).isEqualTo("other – Rafterbook");
        assertThat(shows("batch B other")).as("what undo would take back").isTrue();
        Book.open(own(), Mode.EXISTING, OneEvening.CLOCK).close();
        assertThat(problem()).isNull();
    }

    @Test
    void undoBelongsToTheLogbookThatIsOpen() {
        Path other = logbook("other.rafterbook");
        start();
        key(KeyCode.ENTER, "\r");
        type("Teasel");
        key(KeyCode.ENTER, "\r");
        dialogs.then(other);
        control(KeyCode.O, false);
        control(KeyCode.Z, false);
        assertThat(shows("undone: batch B other")).isTrue();
        control(KeyCode.Z, false);
        stop();
        try (Book mine = Book.open(own(), Mode.READ_ONLY, OneEvening.CLOCK)) {
            assertThat(mine.undoable()).isEqualTo("model Teasel");
        }
    }

    @Test
    void aFlightInTheAirIsStillTimedWhenItsLogbookComesBack() {
        Path other = logbook("other.rafterbook");
        start();
        key(KeyCode.SPACE, " ");
        dialogs.then(other);
        control(KeyCode.O, false);
        control(KeyCode.O, true);
        assertThat(texts(scene().getRoot())).contains("Landed: stop Flight 1");
        key(KeyCode.SPACE, " ");
        stop();
        Flight flight = flights(own()).get(0).flight();
        assertThat(flight.durationS()).isPositive();
    }

    @Test
    void aTimeThatIsNotOnDiskIsNamedBeforeTheWindowIsLeft() {
        start();
        key(KeyCode.SPACE, " ");
        assertThat(window.mayBeLeft()).isTrue();
        try (RefusingStore refusing = new RefusingStore(own())) {
            key(KeyCode.SPACE, " ");
            assertThat(window.mayBeLeft()).isFalse();
            assertThat(problem()).contains("lost if you leave: Flight 1 landed after 0:0");
            assertThat(window.mayBeLeft()).isTrue();
        }
    }

    @Test
    void aNewLogbookIsMadeWhereTheFlyerSays() {
        start();
        Path file = folder.resolve("winter.rafterbook");
        dialogs.then(file);
        control(KeyCode.N, true);
        assertThat(file).exists();
        assertThat(title.get()).isEqualTo("winter – Rafterbook");
        assertThat(shows("A new logbook, nothing in it yet")).isTrue();
    }

    @Test
    void theLogbookThatIsOpenIsNotOpenedAgain() {
        start();
        dialogs.then(own());
        control(KeyCode.O, false);
        assertThat(problem()).contains("is open already");
        assertThat(title.get()).isEqualTo("flights – Rafterbook");
    }

    // ---- What refuses to open ----

    private String problem() {
        Problem problem = tools.errors().shownProperty().get();
        return problem == null ? null : problem.what();
    }

    private void refusedLeavesWhatIsOpen(Path file, String sentence) {
        byte[] before = bytes(file);
        start();
        dialogs.then(file);
        control(KeyCode.O, false);
        assertThat(problem()).contains(sentence);
        assertThat(title.get()).isEqualTo("flights – Rafterbook");
        assertThat(bytes(file)).isEqualTo(before);
        key(KeyCode.SPACE, " ");
        stop();
        assertThat(flights(own())).as("the old one goes on").hasSize(1);
    }

    private static void overwrite(Path file, long at, int value) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.allocate(4).putInt(0, value), at);
        }
    }

    @Test
    void aTextIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("letter.rafterbook"), "Dear flyer, ".repeat(99));
        refusedLeavesWhatIsOpen(file, "is not a Rafterbook logbook");
    }

    @Test
    void aLogbookOfANewerProgramIsRefused() throws IOException {
        Path file = logbook("newer.rafterbook");
        overwrite(file, 60, 7);
        refusedLeavesWhatIsOpen(file, "was written by a newer Rafterbook");
    }

    @Test
    void aDamagedLogbookIsRefused() throws IOException {
        Path file = logbook("damaged.rafterbook");
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.truncate(channel.size() - 3 * 4096);
        }
        refusedLeavesWhatIsOpen(file, "damaged");
    }

    @Test
    void aLogbookOpenInAnotherWindowIsRefused() {
        Path file = logbook("both.rafterbook");
        try (Book there = Book.open(file, Mode.EXISTING, OneEvening.CLOCK)) {
            assertThat(there.undoable()).isNotNull();
            refusedLeavesWhatIsOpen(file, "is open in another window");
        }
    }

    @Test
    void aReadOnlyLogbookIsRefused() throws IOException {
        Path file = logbook("locked.rafterbook");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        org.junit.jupiter.api.Assumptions.assumeFalse(Files.isWritable(file), "the tests' user may write everything");
        refusedLeavesWhatIsOpen(file, "read-only");
    }

    @Test
    void anOwnLogbookThatIsRefusedSaysWhyAndCanBeTriedAgain() throws IOException {
        Files.createDirectories(own().getParent());
        try (Book there = Book.open(own(), Mode.CREATE, OneEvening.CLOCK)) {
            there.hall().addModel("Teasel");
            start();
            assertThat(shows("The logbook is not open.")).isTrue();
            assertThat(shows("is open in another window")).isTrue();
            assertThat(title.get()).isEqualTo("Rafterbook");
            control(KeyCode.DIGIT5, false);
            assertThat(shows("The logbook is not open.")).as("in every place").isTrue();
            key(KeyCode.F1, "");
            key(KeyCode.DIGIT1, "1");
            assertThat(problem()).contains("is open in another window");
        }
        key(KeyCode.ENTER, "\r");
        assertThat(problem()).isNull();
        assertThat(shows("Teasel t1")).isTrue();
    }

    @Test
    void besideARefusedOwnLogbookANewOneCanBeBegun() throws IOException {
        Files.createDirectories(own().getParent());
        Files.writeString(own(), "no logbook at all");
        byte[] before = bytes(own());
        start();
        dialogs.then(folder.resolve("instead.rafterbook"));
        key(KeyCode.DIGIT3, "3");
        assertThat(title.get()).isEqualTo("instead – Rafterbook");
        key(KeyCode.SPACE, " ");
        stop();
        assertThat(flights(folder.resolve("instead.rafterbook"))).hasSize(1);
        assertThat(bytes(own())).isEqualTo(before);
    }

    @Test
    void aFolderThatTakesNoLogbookIsSaidInTheWindow() throws IOException {
        Files.writeString(folder.resolve("Documents"), "a file where the folder should be");
        start();
        assertThat(problem()).isNotNull();
        assertThat(shows("The logbook is not open.")).isTrue();
    }

    @Test
    void theOtherLogbookOpenedLastIsOfferedAtTheNextStart() throws IOException {
        Path club = folder.resolve("club.rafterbook");
        Book.open(club, Mode.CREATE, OneEvening.CLOCK).close();
        start();
        assertThat(shows("Open club")).isFalse();
        dialogs.then(club);
        Fx.key(scene(), KeyCode.O, "", true, false);
        assertThat(title.get()).startsWith("club");
        stop();
        start();
        assertThat(title.get()).startsWith("flights");
        assertThat(shows("Open club")).isTrue();
        Fx.key(scene(), KeyCode.L, "", true, true);
        assertThat(title.get()).startsWith("club");
        stop();
        Files.delete(club);
        start();
        assertThat(shows("Open club")).isFalse();
    }
}
