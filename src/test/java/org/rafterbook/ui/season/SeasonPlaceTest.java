package org.rafterbook.ui.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
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
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.logbook.Mode;
import org.rafterbook.ui.ChosenFiles;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.look.Look;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Theme;
import org.rafterbook.ui.shell.Logbooks;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Shell;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.Book;
import org.rafterbook.work.ImportChoices;
import org.rafterbook.work.ImportFile;
import org.rafterbook.work.Progress;
import org.rafterbook.work.Season;

@FxTest
class SeasonPlaceTest {

    private static final String TABLE = """
            model,session_date,venue,duration_s,ending,setting.pitch,notes
            Teasel,2024-11-05,Drill Hall,480,clean,600,
            Teasel,2025-10-28,Saltmarsh Sports Hall,500,clean,640,steady
            Teasel,2025-10-28,Saltmarsh Sports Hall,560,touched,640,lamp
            Teasel,2025-10-28,Saltmarsh Sports Hall,520,clean,660,
            Marram,2025-11-04,Saltmarsh Sports Hall,200,clean,480,
            Marram,2025-11-04,Saltmarsh Sports Hall,210,clean,480,
            """;

    @TempDir
    Path folder;

    private final Errors errors = new Errors();
    private final ChosenFiles dialogs = new ChosenFiles();
    private final Tools tools = new Tools(errors, new Look(), FxBackground.onTheSpot(errors), dialogs);
    private final List<String> asked = new ArrayList<>();
    private Book book;
    private Stage stage;

    private final Logbooks logbooks = new Logbooks() {
        @Override
        public void openAnother() {
            asked.add("another");
        }

        @Override
        public void openDemo() {
            asked.add("demo");
        }

        @Override
        public void openOwn() {
            asked.add("own");
        }

        @Override
        public void makeNew() {
            asked.add("new");
        }

        @Override
        public void readTables() {
            asked.add("tables");
        }
    };

    private void open(String table) {
        book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, OneEvening.CLOCK);
        if (!table.isEmpty()) {
            take("flights.csv", table);
        }
        SeasonPlace place =
                new SeasonPlace(tools, book, DisplayUnits.METRIC, logbooks, id -> asked.add("review " + id));
        Map<PlaceId, Supplier<? extends Place>> makers = new EnumMap<>(PlaceId.class);
        for (PlaceId id : PlaceId.values()) {
            makers.put(id, () -> place);
        }
        stage = Fx.window(new Shell(tools, makers));
        Fx.layOut(scene());
    }

    private void take(String name, String table) {
        book.imports().carryOut(book.imports().plan(List.of(new ImportFile(name, table)), ImportChoices.none()));
    }

    @AfterEach
    void close() {
        stage.close();
        book.close();
    }

    private Scene scene() {
        return stage.getScene();
    }

    private void key(KeyCode code, String typed) {
        Fx.key(scene(), code, typed);
        Fx.layOut(scene());
    }

    private boolean shows(String text) {
        return scene().getRoot().lookupAll("*").stream()
                .filter(SeasonPlaceTest::inSight)
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
    private <T> List<T> rows(String says) {
        return ((TableView<T>) scene().getRoot().lookupAll(".table-view").stream()
                        .filter(node -> says.equals(node.getAccessibleText()) && inSight(node))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError("no " + says + " in sight among "
                                + scene().getRoot().lookupAll(".table-view").stream()
                                        .map(node -> node.getAccessibleText() + " " + inSight(node))
                                        .toList())))
                .getItems();
    }

    @Test
    void theNewestSeasonIsShownWithEveryModel() {
        open(TABLE);
        assertThat(shows("2025 to 2026, Saltmarsh Sports Hall")).isTrue();
        assertThat(shows("5, 1 “at least”")).isTrue();
        assertThat(shows("n = 3, 2 versions")).isTrue();
        assertThat(shows("n = 2, 1 version")).isTrue();
        assertThat(this.<Season.Best>rows("bests"))
                .extracting(b -> b.flight().durationS())
                .containsExactly(520.0, 210.0);
        assertThat(this.<Season.Evening>rows("evenings")).hasSize(2);
    }

    @Test
    void anotherSeasonIsAKeyAway() {
        open(TABLE);
        key(KeyCode.Y, "y");
        ComboBox<?> seasons = (ComboBox<?>) Objects.requireNonNull(scene().getFocusOwner());
        seasons.hide();
        seasons.getSelectionModel().selectLast();
        Fx.layOut(scene());
        assertThat(shows("2024 to 2025, Drill Hall")).isTrue();
        assertThat(this.<Season.Best>rows("bests"))
                .extracting(b -> b.flight().durationS())
                .containsExactly(480.0);
    }

    @Test
    void versionsAndFlightsAreThoseOfThePickedModel() {
        open(TABLE);
        key(KeyCode.V, "v");
        assertThat(shows("Versions of Teasel")).isTrue();
        assertThat(this.<Season.VersionSeason>rows("versions"))
                .extracting(Season.VersionSeason::version)
                .containsExactly("t3", "t2");
        scene().getRoot().requestFocus();
        key(KeyCode.DOWN, "");
        key(KeyCode.L, "l");
        assertThat(shows("Flights of Marram")).isTrue();
        assertThat(this.<Season.Flown>rows("flights"))
                .extracting(Season.Flown::durationS)
                .containsExactly(200.0, 210.0);
    }

    @Test
    void whatTheLargestTextLeavesNoRoomForIsFoldedToALineWithItsKeys() {
        open(TABLE);
        assertThat(buttons("Bests", "Versions", "Flights", "Evenings", "Charts"))
                .as("nothing is folded at the usual size")
                .isEmpty();
        tools.look().textSizeProperty().set(TextSize.LARGEST);
        Look.dress(scene(), Theme.LIGHT, TextSize.LARGEST);
        Fx.layOut(scene());
        assertThat(buttons("Bests", "Versions", "Flights", "Evenings", "Charts", "Read a table"))
                .containsExactly("Bests", "Versions", "Flights", "Evenings", "Read a table");
        assertThat(shows("2 evenings, the last on Tue 4 Nov")).isTrue();
        key(KeyCode.L, "l");
        assertThat(this.<Season.Flown>rows("flights")).hasSize(3);
        assertThat(buttons("Bests", "Versions", "Flights", "Evenings", "Charts"))
                .containsExactly("Charts", "Evenings");
    }

    /** Which buttons of these words are in sight. */
    private List<String> buttons(String... words) {
        return scene().getRoot().lookupAll(".button.folded").stream()
                .filter(SeasonPlaceTest::inSight)
                .map(node -> ((Labeled) node).getText())
                .filter(List.of(words)::contains)
                .toList();
    }

    @Test
    void anEveningShowsItsFlights() {
        open(TABLE);
        key(KeyCode.E, "e");
        key(KeyCode.ENTER, "\r");
        assertThat(shows("Flights of Tue 4 Nov")).isTrue();
        assertThat(this.<Season.Flown>rows("flights"))
                .extracting(Season.Flown::model)
                .containsOnly("Marram");
    }

    @Test
    void enterOpensThePickedModelInReview() {
        open(TABLE);
        key(KeyCode.DOWN, "");
        key(KeyCode.ENTER, "\r");
        assertThat(asked).singleElement().satisfies(what -> assertThat(what).startsWith("review "));
        String id = asked.get(0).substring("review ".length());
        assertThat(book.riggings().models()).anySatisfy(m -> {
            assertThat(m.id()).isEqualTo(id);
            assertThat(m.name()).isEqualTo("Marram");
        });
    }

    @Test
    void aFlightMadeElsewhereAppears() {
        open(TABLE);
        take("more.csv", "model,session_date,duration_s\nMarram,2025-11-11,230\n");
        Fx.layOut(scene());
        assertThat(shows("6, 1 “at least”")).isTrue();
    }

    @Test
    void theReportIsWrittenWhereTheFlyerSays() throws IOException {
        open(TABLE);
        book.prefer("flyer", "R. Aldous");
        Path file = folder.resolve("report.html");
        dialogs.then(file);
        key(KeyCode.R, "r");
        assertThat(Files.readString(file)).contains("Season 2025 to 2026", "Marram", "8:40");
        assertThat(tools.kept().saysProperty().get()).isEqualTo("report written to report.html");
    }

    @Test
    void everythingIsExportedAndOverwritingIsAskedFirst() {
        open(TABLE);
        Path to = folder.resolve("out");
        dialogs.then(to).then(to);
        Fx.key(scene(), KeyCode.E, "", true, false);
        assertThat(to.resolve("flights.csv")).exists();
        assertThat(tools.kept().saysProperty().get()).startsWith("6 flights in ");
        Fx.key(scene(), KeyCode.E, "", true, false);
        assertThat(errors.shownProperty().get()).isNull();
    }

    @Test
    void anEmptyLogbookSaysWhatToDoFirst() {
        open("");
        assertThat(shows("Read a table")).isTrue();
        key(KeyCode.T, "t");
        key(KeyCode.D, "d");
        assertThat(asked).containsExactly("tables", "demo");
    }

    @Test
    void anEveningsFlightsFollowEachOtherBeforeTheNextEvening() {
        open(TABLE);
        Season season = book.season().load(2025, Progress.none()).season();
        DayPlaces places = DayPlaces.of(season, LocalDate.of(2025, 11, 20));
        List<Double> at = season.flights().stream().map(places::of).toList();
        assertThat(at).isSorted();
        assertThat(at.get(2)).isLessThan(LocalDate.of(2025, 11, 4).toEpochDay());
        assertThat(places.low()).isLessThan(LocalDate.of(2025, 10, 28).toEpochDay());
        assertThat(places.high())
                .as("today is in sight")
                .isGreaterThan(LocalDate.of(2025, 11, 20).toEpochDay());
        assertThat(Objects.requireNonNull(places.places())).hasSize(5);
    }
}
