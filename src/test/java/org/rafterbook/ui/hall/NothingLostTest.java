package org.rafterbook.ui.hall;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.OnShow;
import org.rafterbook.ui.action.Press;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.work.Launch;
import org.rafterbook.work.MarginText;

/** What was stopped or typed in the Hall is on disk or still on the screen. */
@FxTest
class NothingLostTest {

    @TempDir
    Path folder;

    private final LateAnswers answers = new LateAnswers();
    private Path file;
    private HallBench hall;
    private Stage stage;
    private Scene scene;
    private String teasel;

    @BeforeEach
    void open() {
        file = folder.resolve("hall.rafterbook");
        hall = new HallBench(file, answers.tools(), (r, m) -> MarginText.NO_GEOMETRY);
        teasel = hall.desk.addModel("Teasel").id();
        stage = Fx.window(hall.shell);
        scene = stage.getScene();
        hall.model.load();
        Fx.layOut(scene);
        hall.shell.requestFocus();
    }

    @AfterEach
    void close() {
        stage.close();
        hall.close();
    }

    private Press after(double seconds) {
        Instant at = Instant.parse("2026-01-20T18:30:00Z");
        return new Press(1 + Math.round(seconds * 1e9), at.plusMillis(Math.round(seconds * 1000)));
    }

    private void flown(String time) {
        hall.desk
                .flying()
                .typed(
                        Launch.of(teasel, null, null),
                        QuantityParser.typed(Quantity.TIME, DisplayUnits.METRIC)
                                .read(time)
                                .orThrow());
        hall.model.load();
    }

    private void openLast() {
        hall.model.landing().openNext(-1);
        Fx.layOut(scene);
    }

    private List<Flight> flights() {
        return hall.data().evening().flights().stream().map(FlightLine::flight).toList();
    }

    private TextField field(String name) {
        return scene.getRoot().lookupAll(".text-field").stream()
                .filter(node -> name.equals(node.getAccessibleText()) && node.isVisible())
                .map(TextField.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private void key(KeyCode code, String typed) {
        Fx.key(scene, code, typed);
        Fx.layOut(scene);
    }

    private void type(String text) {
        for (char c : text.toCharArray()) {
            KeyCode code = Character.isDigit(c) ? KeyCode.getKeyCode(String.valueOf(c)) : KeyCode.UNDEFINED;
            key(code, String.valueOf(c));
        }
    }

    private String words() {
        Fx.layOut(scene);
        return OnShow.words(scene);
    }

    @Test
    void aStoppedTimeThatCannotBeKeptStaysAndIsOfferedAgain() {
        hall.model.preparing().start(after(0));
        try (RefusingStore refusing = new RefusingStore(file)) {
            hall.model.air().stop(after(514.2));
            assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.LANDING);
            assertThat(words())
                    .contains("8:34")
                    .contains("This time is not kept yet.")
                    .contains("Keep this time");

            key(KeyCode.ENTER, "\r");
            assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.LANDING);
            assertThat(words()).contains("8:34").contains("This time is not kept yet.");
        }
        key(KeyCode.ENTER, "\r");
        assertThat(flights().get(0).durationS()).isEqualTo(514.2);
        assertThat(words()).contains("Prepare flight 2").doesNotContain("This time is not kept yet.");
    }

    @Test
    void aRefusedTimeIsOfferedAgainWhenItsLogbookIsOpenedAgainInTheSameRun() {
        hall.model.preparing().start(after(0));
        HallModel again;
        try (RefusingStore refusing = new RefusingStore(file)) {
            hall.model.air().stop(after(514.2));
            hall.view.hidden();
            again = anotherModel();
            again.load();
            LandingModel.Landed landed =
                    Objects.requireNonNull(again.landing().landedProperty().get());
            assertThat(again.stateProperty().get()).isEqualTo(HallState.LANDING);
            assertThat(landed.durationS()).isEqualTo(514.2);
            assertThat(landed.refused()).isNotNull();
        }
        again.landing().done();
        assertThat(Objects.requireNonNull(again.data()).evening().flights())
                .extracting(line -> line.flight().durationS())
                .containsExactly(514.2);
        assertThat(again.landing().landedProperty().get().refused()).isNull();
    }

    @Test
    void aFlightWhoseLaunchWasRefusedIsTimedOnWhenItsLogbookIsOpenedAgainInTheSameRun() {
        HallModel again;
        try (RefusingStore refusing = new RefusingStore(file)) {
            hall.model.preparing().start(after(0));
            hall.view.hidden();
            again = anotherModel();
            again.load();
            assertThat(again.stateProperty().get()).isEqualTo(HallState.IN_THE_AIR);
        }
        again.air().stop(after(514.2));
        assertThat(Objects.requireNonNull(again.data()).evening().flights())
                .extracting(line -> line.flight().durationS())
                .containsExactly(514.2);
        assertThat(again.air().watches()).isEmpty();
    }

    @Test
    void aFlightWhoseLaunchWasRefusedCanBeEndedWithATypedTimeOrAsNotLaunched() {
        try (RefusingStore refusing = new RefusingStore(file)) {
            hall.model.preparing().start(after(0));
            hall.model.stateProperty().set(HallState.PREPARING);
            hall.model.preparing().start(after(5));
        }
        hall.model.air().didNotLaunch();
        assertThat(flights()).extracting(Flight::ending).containsExactly(Ending.ABORTED);
        assertThat(hall.model.air().watches()).hasSize(1);
        Timed timed = hall.model.air().watches().get(0);
        hall.model
                .air()
                .landTyped(
                        timed,
                        QuantityParser.typed(Quantity.TIME, DisplayUnits.METRIC)
                                .read("8:20")
                                .orThrow(),
                        () -> {},
                        failure -> {
                            throw new AssertionError(failure);
                        });
        assertThat(flights()).extracting(Flight::durationS).containsExactly(null, 500.0);
        assertThat(hall.model.air().watches()).isEmpty();
    }

    @Test
    void aTypedTimeTakesThePlaceOfOneThatWasRefused() {
        hall.model.preparing().start(after(0));
        try (RefusingStore refusing = new RefusingStore(file)) {
            hall.model.air().stop(after(514.2));
        }
        hall.model
                .landing()
                .correctTime(
                        QuantityParser.typed(Quantity.TIME, DisplayUnits.METRIC)
                                .read("8:30")
                                .orThrow(),
                        () -> {},
                        failure -> {
                            throw new AssertionError(failure);
                        });
        assertThat(words()).contains("8:30").doesNotContain("This time is not kept yet.");
        key(KeyCode.ENTER, "\r");
        assertThat(flights()).extracting(Flight::durationS).containsExactly(510.0);
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.PREPARING);
    }

    private HallModel anotherModel() {
        return new HallModel(
                hall.desk,
                new FirstReading(hall.desk),
                answers.tools().background(),
                answers.tools().errors(),
                hall.clock,
                hall.watches);
    }

    @Test
    void aRefusedStopCanStillBeAWrongOne() {
        hall.model.preparing().start(after(0));
        try (RefusingStore refusing = new RefusingStore(file)) {
            hall.model.air().stop(after(20));
            key(KeyCode.BACK_SPACE, "");
            assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.IN_THE_AIR);
        }
        hall.model.air().stop(after(600));
        assertThat(flights().get(0).durationS()).isEqualTo(600);
    }

    @Test
    void aRefusedTimeWaitsWhileAnotherModelIsStillTimed() {
        hall.model.preparing().start(after(0));
        hall.model.stateProperty().set(HallState.PREPARING);
        hall.model.preparing().start(after(5));
        try (RefusingStore refusing = new RefusingStore(file)) {
            hall.model.air().stop(after(300));
            key(KeyCode.V, "v");
            assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.IN_THE_AIR);
        }
        hall.model.air().stop(after(400));
        key(KeyCode.ENTER, "\r");
        assertThat(words()).contains("4:55").contains("This time is not kept yet.");
        key(KeyCode.ENTER, "\r");
        key(KeyCode.ENTER, "\r");
        assertThat(flights()).extracting(Flight::durationS).containsExactly(400.0, 295.0);
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.PREPARING);
    }

    @Test
    void aTypedTimeStaysUntilItIsKeptAndIsKeptOnce() {
        answers.slow();
        type("1050");
        key(KeyCode.ENTER, "\r");
        key(KeyCode.ENTER, "\r");
        assertThat(field("Another watch").getText()).isEqualTo("1050");
        answers.arrive();
        assertThat(flights()).hasSize(1);

        hall.model.stateProperty().set(HallState.PREPARING);
        hall.shell.requestFocus();
        try (RefusingStore refusing = new RefusingStore(file)) {
            type("620");
            key(KeyCode.ENTER, "\r");
            assertThat(field("Another watch").getText()).isEqualTo("620");
            assertThat(flights()).hasSize(1);
        }
        key(KeyCode.ENTER, "\r");
        assertThat(flights()).hasSize(2);
    }

    @Test
    void aNoteThatCannotBeKeptStandsInItsFieldWithTheReasonAndIsTriedAgain() {
        flown("500 s");
        openLast();
        try (RefusingStore refusing = new RefusingStore(file)) {
            key(KeyCode.N, "n");
            type("steady");
            key(KeyCode.ENTER, "\r");
            assertThat(field("Note").getText()).isEqualTo("steady");
            assertThat(words()).contains("× ");
            assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.LANDING);
        }
        key(KeyCode.ENTER, "\r");
        assertThat(flights().get(0).notes()).isEqualTo("steady");
    }

    @Test
    void aLateRefusalIsShownBesideItsFieldBeforeTheHallGoesOn() {
        flown("500 s");
        openLast();
        key(KeyCode.N, "n");
        type("steady");
        answers.slow();
        try (RefusingStore refusing = new RefusingStore(file)) {
            key(KeyCode.ENTER, "\r");
        }
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.LANDING);
        answers.arrive();
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.LANDING);
        assertThat(field("Note").getText()).isEqualTo("steady");
    }

    @Test
    void nothingOfTheFlightBeforeStandsBesideAFlightThatIsStillBeingKept() {
        hall.model.preparing().start(after(0));
        key(KeyCode.W, "w");
        hall.model.air().stop(after(500));
        key(KeyCode.DIGIT3, "3");
        assertThat(words()).contains("Did that cost time?");
        hall.model.landing().done();
        answers.slow();
        hall.model.preparing().start(after(600));
        hall.model.air().stop(after(1100));
        assertThat(words()).contains("8:20").doesNotContain("Did that cost time?");
        answers.arrive();
    }

    @Test
    void anotherFlightOpenedWhileANoteIsTypedKeepsTheNote() {
        flown("500 s");
        flown("510 s");
        openLast();
        key(KeyCode.N, "n");
        type("steady");
        EveningList list = (EveningList) scene.getRoot().lookup(".evening-list");
        Fx.click(list, 40, list.em() * (list.heightEm(1) + list.heightEm(2)) / 2); // the second row: flight 1
        assertThat(flights().get(1).notes()).isEqualTo("steady");
        assertThat(flights().get(0).notes()).isNull();
        assertThat(field("Note").getText()).isEmpty();
    }

    @Test
    void onlyAWatchedFlightAsksWhetherItWasStoppedByMistake() {
        flown("500 s");
        openLast();
        assertThat(words()).doesNotContain("Stopped by mistake?").doesNotContain("Still flying");
        hall.model.stateProperty().set(HallState.PREPARING);
        hall.model.preparing().start(after(0));
        hall.model.air().stop(after(300));
        assertThat(words()).contains("Stopped by mistake?").contains("Still flying");
    }

    @Test
    void aLeftOutFlightIsMarkedInTheListAndCountsAgain() {
        flown("500 s");
        openLast();
        hall.model.landing().leaveOut("hit the net", failure -> {});
        assertThat(words()).contains("× flagged").contains("the estimates count it all the same");
        hall.book.review().countLateFlags(teasel, true);
        hall.model.load();
        assertThat(words())
                .contains("× left out")
                .contains("(8:20)")
                .contains("Left out of the estimates: hit the net.");
        key(KeyCode.G, "g");
        assertThat(words()).doesNotContain("× left out").doesNotContain("(8:20)");
        assertThat(flights().get(0).leftOutWhy()).isNull();
    }

    @Test
    void aTimeFarBelowAllOthersIsAskedAboutAndKept() {
        flown("500 s");
        flown("520 s");
        flown("510 s");
        hall.model.preparing().start(after(0));
        hall.model.air().stop(after(2));
        assertThat(words()).contains("Was it an aborted launch?");
        key(KeyCode.A, "a");
        Flight flight = flights().get(3);
        assertThat(flight.durationS()).isEqualTo(2);
        assertThat(flight.ending()).isEqualTo(Ending.ABORTED);
        assertThat(flight.leftOutWhy()).isEqualTo("aborted launch");
        assertThat(flight.leftOutBeforeTime()).isFalse();
        assertThat(words()).doesNotContain("Was it an aborted launch?").contains("× flagged");

        key(KeyCode.DIGIT1, "1");
        assertThat(flights().get(3).ending()).isEqualTo(Ending.CLEAN);
        assertThat(flights().get(3).leftOutWhy()).isNull();
        hall.model.landing().done();
        hall.model.preparing().start(after(0));
        hall.model.air().stop(after(400));
        assertThat(words()).doesNotContain("Was it an aborted launch?");
    }

    @Test
    void aFlightInTheAirIsTimedOnWhenItsLogbookIsOpenedAgainInTheSameRun() {
        hall.model.preparing().start(after(0));
        assertThat(words()).doesNotContain("The program was closed");
        hall.view.hidden();
        HallModel again = anotherModel();
        again.load();
        Timed timed = Objects.requireNonNull(again.air().pickedProperty().get());
        assertThat(timed.watch().byWallClock()).isFalse();
        again.air().stop(after(300));
        assertThat(Objects.requireNonNull(again.data())
                        .evening()
                        .flights()
                        .get(0)
                        .flight()
                        .clockDoubtS())
                .isNull();
    }

    @Test
    void aHallThatWasLeftFollowsNothing() {
        hall.view.hidden();
        hall.model.stateProperty().set(HallState.VISIT);
        assertThat(words()).doesNotContain("Air now");
        hall.view.shown();
        assertThat(words()).contains("Air now");
    }
}
