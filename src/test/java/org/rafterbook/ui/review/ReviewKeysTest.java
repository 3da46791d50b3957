package org.rafterbook.ui.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
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
import org.rafterbook.flight.Trial;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.OnShow;
import org.rafterbook.ui.ReviewScreens;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.work.ReviewEvenings;

/** Review by its keys: trials started and ended, a trial of one's own, the faces, chances and late flags. */
@FxTest
class ReviewKeysTest {

    @TempDir
    Path folder;

    private ReviewEvenings evenings;
    private Tools tools;
    private Stage stage;
    private Scene scene;

    @BeforeEach
    void open() {
        evenings = new ReviewEvenings(folder.resolve("a.rafterbook"));
        tools = Fx.tools();
    }

    @AfterEach
    void close() {
        stage.close();
        evenings.close();
    }

    private void show() {
        stage = Fx.window(ReviewScreens.shell(tools, evenings));
        scene = stage.getScene();
        Fx.layOut(scene);
    }

    private void press(KeyCode key, String typed) {
        Fx.key(scene, key, typed);
        Fx.layOut(scene);
        assertThat(tools.errors().shownProperty().get()).isNull();
    }

    private void type(String text) {
        for (char letter : text.toCharArray()) {
            press(
                    letter == ' '
                            ? KeyCode.SPACE
                            : letter == '.'
                                    ? KeyCode.PERIOD
                                    : KeyCode.getKeyCode(String.valueOf(letter).toUpperCase(java.util.Locale.ROOT)),
                    String.valueOf(letter));
        }
    }

    private String words() {
        return OnShow.words(scene);
    }

    private List<Trial> trials() {
        return evenings.trials();
    }

    @Test
    void theProposedTrialIsStartedAndEndedWithItsReason() {
        ReviewScreens.evening(evenings);
        show();
        assertThat(words()).contains("Trial: wing edge 149 or 146 mm.");
        press(KeyCode.T, "t");
        assertThat(trials()).hasSize(1);
        assertThat(words()).contains("0 of 6 flown").contains("order drawn at the start");
        press(KeyCode.N, "n");
        assertThat(words()).contains("First the open one");
        press(KeyCode.T, "t");
        assertThat(trials()).hasSize(1);
        press(KeyCode.X, "x");
        type("hall closed");
        press(KeyCode.ENTER, "");
        assertThat(trials().get(0).judgedAt()).isNotNull();
        press(KeyCode.Y, "y");
        assertThat(words()).contains("Ended before all 6 were flown: hall closed.");
    }

    @Test
    void escapeLeavesTheQuestionWhyATrialIsEnded() {
        ReviewScreens.evening(evenings);
        show();
        press(KeyCode.T, "t");
        press(KeyCode.X, "x");
        press(KeyCode.ESCAPE, "");
        assertThat(trials().get(0).judgedAt()).isNull();
        assertThat(words()).doesNotContain("Why before all are flown");
    }

    @Test
    void aTrialOfOnesOwnIsTypedAndWhatItWillShowIsTold() {
        ReviewScreens.evening(evenings);
        show();
        press(KeyCode.O, "o");
        assertThat(words()).contains("3 + 3 flights on one day tell a difference to about ±");
        assertThat(scene.getFocusOwner()).isInstanceOf(TextField.class);
        type("149");
        press(KeyCode.ENTER, "");
        assertThat(trials()).isEmpty();
        assertThat(words()).contains("A value of wing edge is needed.");
        press(KeyCode.TAB, "");
        type("143.5");
        press(KeyCode.ENTER, "");
        Trial trial = trials().get(0);
        assertThat(trial.numberA()).isEqualTo(0.149);
        assertThat(trial.numberB()).isEqualTo(0.1435);
        assertThat(words()).contains("0 of 6 flown");
    }

    @Test
    void escapeLeavesTheFormWithoutATrial() {
        ReviewScreens.evening(evenings);
        show();
        press(KeyCode.O, "o");
        press(KeyCode.ESCAPE, "");
        assertThat(words()).contains("Start this trial");
        assertThat(trials()).isEmpty();
    }

    @Test
    void goingBackSetsAVersionOfWhichTheReasonIsTold() {
        ReviewScreens.evening(evenings);
        show();
        press(KeyCode.B, "b");
        assertThat(words()).contains("last setting");
    }

    @Test
    void theNextChanceIsTakenByItsKey() {
        evenings.venue(7.9);
        evenings.trim(evenings.setting("wing edge", "LENGTH", "mm"), 0.149);
        for (int i = 0; i < 8; i++) {
            double torque = 0.0022 + 0.0001 * i;
            evenings.flyHigh(500 + i, torque, 7.8 * torque / 0.0027, i > 5);
        }
        show();
        press(KeyCode.K, "k");
        assertThat(evenings.book().preference("ceiling.chance")).isEqualTo("0.15");
    }

    @Test
    void aFlightFlaggedLateIsLeftOutOnlyWhenTheFlyerSaysSo() {
        ReviewScreens.evening(evenings);
        String flight = Objects.requireNonNull(
                        evenings.book().hall().evening().flights().get(0))
                .flight()
                .id();
        evenings.book().hall().answers().leaveOut(flight, "balloon in the way");
        show();
        press(KeyCode.R, "r");
        assertThat(words()).contains("balloon in the way").contains("so it counts as flown");
        assertThat(words()).contains("8 flights on 2 versions");
        press(KeyCode.L, "l");
        assertThat(words()).contains("7 flights on 2 versions").contains("Count late-flagged flights");
    }

    @Test
    void pressedAgainWhatIsSaidTakesTheTablesRoomAndEscapeGivesItBack() {
        ReviewScreens.evening(evenings);
        show();
        assertThat(words()).contains("Which trim change raised the time?");
        press(KeyCode.S, "s");
        assertThat(words()).doesNotContain("Which trim change raised the time?");
        press(KeyCode.ESCAPE, "");
        assertThat(words()).contains("Which trim change raised the time?");
    }

    @Test
    void timesStandAsFlownOrAtEqualTurns() {
        ReviewScreens.evening(evenings);
        show();
        press(KeyCode.E, "e");
        assertThat(words()).contains("Time as flown");
        press(KeyCode.F, "f");
        assertThat(words()).contains("Partial motors too");
    }
}
