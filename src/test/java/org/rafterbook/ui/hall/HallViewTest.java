package org.rafterbook.ui.hall;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.power.Motor;
import org.rafterbook.power.MotorLimits;
import org.rafterbook.power.RubberBatch;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindEnd;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.OnShow;
import org.rafterbook.ui.action.Press;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.work.MarginText;
import org.rafterbook.work.WindForm;

@FxTest
class HallViewTest {

    @TempDir
    Path folder;

    private HallBench hall;
    private Stage stage;
    private Scene scene;

    @BeforeEach
    void open() {
        hall = new HallBench(folder.resolve("hall.rafterbook"), Fx.tools(), (r, m) -> MarginText.NO_GEOMETRY);
        stage = Fx.window(hall.shell);
        scene = stage.getScene();
        Fx.layOut(scene);
        hall.shell.requestFocus();
    }

    @AfterEach
    void close() {
        stage.close();
        hall.close();
    }

    private void key(KeyCode code, String typed) {
        Fx.key(scene, code, typed);
    }

    private void type(String text) {
        for (char c : text.toCharArray()) {
            KeyCode code = Character.isDigit(c) ? KeyCode.getKeyCode(String.valueOf(c)) : KeyCode.UNDEFINED;
            Fx.key(scene, code == null ? KeyCode.UNDEFINED : code, String.valueOf(c));
        }
    }

    private Flight only() {
        assertThat(hall.data().evening().flights()).hasSize(1);
        return hall.data().evening().flights().get(0).flight();
    }

    private boolean shows(String text) {
        return OnShow.words(scene).contains(text);
    }

    /** A press so many seconds after another, on both clocks. */
    private static Press after(Press press, double seconds) {
        return new Press(
                press.nanoTime() + Math.round(seconds * 1e9), press.at().plusMillis(Math.round(seconds * 1000)));
    }

    @Test
    void anEmptyLogbookNeedsOnlyANameAndATime() {
        assertThat(shows("A new model's name")).isTrue();
        hall.model.preparing().addModel("Teasel", () -> {}, failure -> {
            throw new AssertionError(failure);
        });
        hall.shell.requestFocus();

        type("1050");
        assertThat(shows("17:30")).isTrue();
        assertThat(hall.data().evening().flights()).isEmpty();
        key(KeyCode.ENTER, "\r");

        assertThat(only().durationS()).isEqualTo(1050);
        assertThat(only().durationSource()).isEqualTo(DurationSource.TYPED);
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.LANDING);
    }

    @Test
    void spaceStartsAndStopsAndBackspaceTakesAWrongStopBack() {
        hall.desk.addModel("Teasel");
        hall.model.load();
        hall.clock.now = Instant.now();
        key(KeyCode.SPACE, " ");
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.IN_THE_AIR);
        assertThat(hall.data().evening().inTheAir()).hasSize(1);

        key(KeyCode.SPACE, " ");
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.LANDING);
        assertThat(only().durationSource()).isEqualTo(DurationSource.WATCH);
        key(KeyCode.BACK_SPACE, "");
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.IN_THE_AIR);
        assertThat(only().durationS()).isNull();

        key(KeyCode.SPACE, " ");
        key(KeyCode.DIGIT1, "1");
        key(KeyCode.ENTER, "\r");
        assertThat(only().ending()).isEqualTo(Ending.CLEAN);
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.PREPARING);
    }

    @Test
    void theTimeIsTheDifferenceOfThePressesThemselves() {
        hall.desk.addModel("Teasel");
        hall.model.load();
        Press start = new Press(5_000_000_000L, hall.clock.instant());

        hall.model.preparing().start(start);
        hall.model.air().note(after(start, 192), FlightEventKind.STALLED, null, null);
        hall.model.air().stop(after(start, 641.3));

        assertThat(only().durationS()).isEqualTo(641.3);
        assertThat(only().clockDoubtS()).isNull();
        List<FlightEvent> events = hall.data().evening().eventsOf(only().id());
        assertThat(events).extracting(FlightEvent::atS).containsExactly(192.0);
        assertThat(shows("10:41")).isTrue();
    }

    @Test
    void aFlightFoundInTheAirIsStillTimed() throws Exception {
        hall.desk.addModel("Teasel");
        hall.model.load();
        hall.model.preparing().start(new Press(1, hall.clock.instant()));
        Instant launched = hall.clock.instant();
        stage.close();
        hall.close();
        open();
        hall.clock.now = launched.plusSeconds(95);

        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.IN_THE_AIR);
        assertThat(shows("wall clock")).isTrue();
        hall.model.air().stop(new Press(3, launched.plusSeconds(100)));

        assertThat(only().durationS()).isEqualTo(100);
        assertThat(only().durationSource()).isEqualTo(DurationSource.WALL_CLOCK);
        assertThat(shows("its time goes by the wall clock")).isTrue();
    }

    @Test
    void aLetterPicksASettingAndArrowsTurnIt() {
        String model = hall.desk.addModel("Teasel").id();
        SettingDef wing = hall.book.riggings().addSetting(model, "Wing position", "LENGTH", "mm", 0.001, 0.0005, null);
        hall.desk.set(model, wing.id(), Setting.of(0.149));
        hall.model.load();
        KeyCode letter = KeyCode.getKeyCode(Objects.requireNonNull(wing.keyLetter()));

        Fx.key(scene, letter, wing.keyLetter());
        key(KeyCode.LEFT, "");
        key(KeyCode.LEFT, "");

        assertThat(shows("147 mm")).isTrue();
        assertThat(shows("margin needs span, chord and balance")).isTrue();
        Fx.key(scene, KeyCode.Z, "", true, false);
        assertThat(shows("148 mm")).isTrue();
    }

    @Test
    void tooManyTurnsLeftAreRefusedBesideTheField() {
        hall.desk.addModel("Teasel");
        hall.desk.winding().keep(null, new WindForm(null, 1000.0, 50.0, null, null, null, Map.of()));
        hall.model.load();
        Press start = new Press(1, hall.clock.instant());
        hall.model.preparing().start(start);
        hall.model.air().stop(after(start, 300));
        Fx.layOut(scene);

        key(KeyCode.U, "u");
        type("951");
        key(KeyCode.ENTER, "\r");
        assertThat(shows("951 turns left are more than the 950 on the motor")).isTrue();
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.LANDING);

        key(KeyCode.U, "u");
        type("590");
        key(KeyCode.ENTER, "\r");
        assertThat(only().turnsLeft()).isEqualTo(590);
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.PREPARING);
    }

    @Test
    void lettersTypedInTheListOfModelsAreNoKeysOfTheHall() {
        hall.desk.addModel("Marram");
        hall.desk.addModel("Teasel");
        hall.model.load();
        Fx.layOut(scene);
        key(KeyCode.M, "m");
        key(KeyCode.N, "n");
        key(KeyCode.SPACE, " ");
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.PREPARING);
    }

    @Test
    void undoOfTheLandingPutsTheWatchBack() {
        hall.desk.addModel("Teasel");
        hall.model.load();
        Press start = new Press(1, hall.clock.instant());
        hall.model.preparing().start(start);
        hall.model.air().stop(after(start, 20));

        Fx.key(scene, KeyCode.Z, "", true, false);

        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.IN_THE_AIR);
        hall.model.air().stop(after(start, 300));
        assertThat(only().durationS()).isEqualTo(300);
        assertThat(only().durationSource()).isEqualTo(DurationSource.WATCH);
    }

    @Test
    void aTouchIsAskedAboutAndYesCountsAsAtLeast() {
        hall.desk.addModel("Teasel");
        hall.model.load();
        Press start = new Press(1, hall.clock.instant());
        hall.model.preparing().start(start);
        key(KeyCode.W, "w");
        hall.model.air().stop(after(start, 527));

        key(KeyCode.DIGIT1, "1");
        Fx.layOut(scene);
        assertThat(shows("Did that cost time?")).isTrue();
        key(KeyCode.T, "t");

        assertThat(only().cutShort()).isEqualTo(CutShort.YES);
        assertThat(shows("≥ 8:47")).isTrue();
    }

    @Test
    void breakingTurnsRestOnTheBatchsOwnConstantWhereItHasOne() {
        RubberBatch june = hall.book.motors().addBatch("June", null, 40.0, Map.of());
        Motor own = hall.book.motors().addMotor("M1", june.id(), 0.34, 0.0016, Map.of());
        Motor usual = hall.desk
                .winding()
                .addMotor(
                        "M2",
                        QuantityParser.typed(Quantity.LENGTH, DisplayUnits.METRIC)
                                .read("340 mm")
                                .orThrow(),
                        QuantityParser.typed(Quantity.MASS, DisplayUnits.METRIC)
                                .read("1.6 g")
                                .orThrow());
        for (Motor motor : List.of(own, usual)) {
            Wind wind =
                    hall.desk.winding().keep(null, new WindForm(motor.id(), 800.0, null, null, null, null, Map.of()));
            hall.model.load();
            hall.model.stateProperty().set(HallState.WINDING);
            Fx.layOut(scene);
            double constant = motor == own ? 40 : MotorLimits.PRIOR_TURNS_CONSTANT;
            String turns = String.valueOf(Math.round(MotorLimits.breakingTurns(constant, 0.34, 0.0016)));
            assertThat(OnShow.words(scene))
                    .contains("expected to break at about " + turns + " turns")
                    .contains(motor == own ? "by the turns constant of batch June" : "a published rule of thumb");
            hall.desk.winding().end(wind.id(), WindEnd.LET_DOWN);
        }
    }

    @Test
    void cautionsStandWhereAMotorIsWound() {
        key(KeyCode.N, "n");
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.WINDING);
        Fx.layOut(scene);
        assertThat(shows("This wind")).isTrue();
        assertThat(scene.getRoot().lookupAll(".caution-box")).hasSizeGreaterThanOrEqualTo(3);
        key(KeyCode.T, "t");
        type("132");
        key(KeyCode.ENTER, "\r");
        assertThat(Objects.requireNonNull(hall.data().prepared().wind()).turnsWound())
                .isEqualTo(132);
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.PREPARING);
    }
}
