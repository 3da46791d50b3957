package org.rafterbook.ui.hall;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
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
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.OnShow;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.work.MarginText;

/** By keys alone: a question that Review leaves open becomes a trial, the trial is flown in the Hall, and it answers. */
@FxTest
class TrialWalkTest {

    @TempDir
    Path folder;

    private Tools tools;
    private HallBench hall;
    private Stage stage;
    private Scene scene;

    @BeforeEach
    void open() {
        tools = Fx.tools();
        hall = new HallBench(folder.resolve("a.rafterbook"), tools, (r, m) -> MarginText.NO_GEOMETRY);
        String model = hall.desk.addModel("Teasel").id();
        SettingDef wing = hall.book.riggings().addSetting(model, "Wing position", "LENGTH", "mm", 0.001, 0.0005, null);
        hall.desk.set(model, wing.id(), Setting.of(0.149));
        hall.model.load();
        fly(500, 512);
        hall.desk.set(model, wing.id(), Setting.of(0.146));
        hall.model.load();
        fly(520, 508);
        stage = Fx.window(hall.shell);
        scene = stage.getScene();
        Fx.layOut(scene);
    }

    @AfterEach
    void close() {
        stage.close();
        hall.close();
    }

    private void fly(double... seconds) {
        for (double s : seconds) {
            hall.model
                    .preparing()
                    .typed(
                            QuantityParser.typed(Quantity.TIME, DisplayUnits.METRIC)
                                    .read(s + " s")
                                    .orThrow(),
                            () -> {},
                            failure -> {
                                throw new AssertionError(failure);
                            });
            hall.model.landing().done();
            hall.clock.forward(900);
        }
    }

    private void press(KeyCode key, String typed) {
        Fx.key(scene, key, typed);
        Fx.layOut(scene);
        assertThat(tools.errors().shownProperty().get()).isNull();
    }

    /** A flight timed by somebody else, its end told, and on to the next. */
    private void flyTyped(int seconds) {
        for (char digit : String.valueOf(seconds).toCharArray()) {
            press(KeyCode.getKeyCode(String.valueOf(digit)), String.valueOf(digit));
        }
        press(KeyCode.SPACE, " ");
        press(KeyCode.S, "s");
        press(KeyCode.ENTER, "");
        assertThat(hall.model.stateProperty().get()).isEqualTo(HallState.LANDING);
        press(KeyCode.DIGIT1, "1");
        press(KeyCode.ENTER, "");
        hall.clock.forward(900);
    }

    @Test
    void anOpenQuestionIsTriedAndAnswered() {
        press(KeyCode.F4, "");
        assertThat(OnShow.words(scene))
                .contains("Trial: Wing position 149 or 146 mm.")
                .contains("would bring the interval to about");
        press(KeyCode.T, "t");
        assertThat(OnShow.words(scene)).contains("Trial: Wing position at 149 or 146 mm, 0 of 6 flown");
        press(KeyCode.N, "n");
        assertThat(OnShow.words(scene)).contains("First the open one");

        press(KeyCode.F1, "");
        assertThat(OnShow.words(scene)).contains("0 of 6 flown").contains("next: t");
        press(KeyCode.C, "c");
        for (int flight = 1; flight <= 6; flight++) {
            boolean first = Objects.requireNonNull(hall.model.trial().now()).nextSide()
                    == org.rafterbook.review.TrialPlan.Side.A;
            assertThat(hall.model.trial().now().set())
                    .as("set for flight %d", flight)
                    .isTrue();
            flyTyped((first ? 500 : 560) + flight);
            if (flight < 6) {
                assertThat(OnShow.words(scene)).contains(flight + " of 6 flown").doesNotContain("these flights alone");
            }
        }
        assertThat(hall.model.trial().now()).isNull();
        assertThat(OnShow.words(scene))
                .contains("Trial judged")
                .contains("Trial: Wing position at 149 or 146 mm, 3 + 3 flown: 146 mm against 149 mm +");

        press(KeyCode.F4, "");
        press(KeyCode.Y, "y");
        assertThat(OnShow.words(scene)).contains("from 3 + 3 clean flights on 1 day, these flights alone.");
        assertThat(OnShow.words(scene))
                .contains("With all flights of Teasel: Wing position 149 → 146 mm: raised the time");
    }

    @Test
    void aTrialIsEndedWithItsReasonBeforeAllAreFlown() {
        press(KeyCode.F4, "");
        press(KeyCode.T, "t");
        press(KeyCode.F1, "");
        press(KeyCode.C, "c");
        flyTyped(505);
        press(KeyCode.Z, "z");
        for (char letter : "hall closed".toCharArray()) {
            press(
                    letter == ' '
                            ? KeyCode.SPACE
                            : KeyCode.getKeyCode(String.valueOf(letter).toUpperCase()),
                    String.valueOf(letter));
        }
        press(KeyCode.ENTER, "");
        assertThat(hall.model.trial().now()).isNull();
        assertThat(OnShow.words(scene)).contains("Ended before all 6 were flown: hall closed.");
    }
}
