package org.rafterbook.ui.hall;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.flight.Flight;
import org.rafterbook.power.Wind;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.OnShow;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.Launch;
import org.rafterbook.work.MarginText;
import org.rafterbook.work.WindForm;

/** What the next flight may do stands beside that flight, or not at all. */
@FxTest
class HallOutlookTest {

    @TempDir
    Path folder;

    private final LateAnswers answers = new LateAnswers();
    private HallBench hall;
    private Stage stage;
    private Scene scene;

    @BeforeEach
    void open() {
        hall = new HallBench(folder.resolve("hall.rafterbook"), answers.tools(), (r, m) -> MarginText.NO_GEOMETRY);
        hall.desk.addModel("Marram");
        hall.desk.addModel("Teasel");
        hall.desk.visit().add("Saltmarsh Sports Hall", null, null);
        String venue = Objects.requireNonNull(hall.desk.evening().venue()).id();
        hall.desk.visit().addMark(venue, "lamps", typed(Quantity.HEIGHT, "7.9"), true);
        String teasel =
                Objects.requireNonNull(hall.desk.prepare().rigged()).model().id();
        for (int i = 0; i < 4; i++) {
            Wind wind = hall.desk.winding().keep(null, form(0.0022 + 0.0002 * i));
            Flight flight = hall.desk
                    .flying()
                    .typed(Launch.of(teasel, wind.id(), null), typed(Quantity.TIME, 500 + 3 * i + " s"));
            hall.desk.answers().peak(flight.id(), peak(6.4 + 0.4 * i));
        }
        wind(0.0024);
        stage = Fx.window(hall.shell);
        scene = stage.getScene();
        Fx.layOut(scene);
    }

    @AfterEach
    void close() {
        stage.close();
        hall.close();
    }

    private static TypedValue typed(Quantity quantity, String text) {
        return QuantityParser.typed(quantity, DisplayUnits.METRIC).read(text).orThrow();
    }

    private static TypedRange peak(double metres) {
        return QuantityParser.typed(Quantity.HEIGHT, DisplayUnits.METRIC)
                .readRange(metres + " m")
                .orThrow();
    }

    private static WindForm form(double torqueNm) {
        return new WindForm(null, 1500.0, null, null, torqueNm, null, Map.of());
    }

    private void wind(double torqueNm) {
        hall.model.preparing().wind(form(torqueNm), failure -> {
            throw new AssertionError(failure);
        });
    }

    private String words() {
        Fx.layOut(scene);
        return OnShow.words(scene);
    }

    @Test
    void theChanceOfOneTorqueNeverStandsBesideAnother() {
        assertThat(words()).contains("2.4 N·mm: ").contains("would touch lamps");
        hall.model.preparing().relaunchProperty().set(true);
        assertThat(words()).as("a relaunch has no torque").doesNotContain("would touch lamps");
        hall.model.preparing().relaunchProperty().set(false);

        answers.slow();
        wind(0.0027);
        while (answers.waiting() > 0 && !words().contains("2.7 N·mm launch torque")) {
            answers.arriveOne();
        }
        assertThat(hall.model.outlookProperty().get()).isEmpty();
        assertThat(words())
                .contains("2.7 N·mm launch torque")
                .contains("The chance to touch is being computed.")
                .doesNotContain("would touch lamps");
        answers.arrive();
        assertThat(words()).contains("2.7 N·mm: ").contains("would touch lamps").doesNotContain("being computed");
    }

    @Test
    void anAnswerToAnOlderQuestionIsDropped() {
        answers.slow();
        hall.model.preparing().choose(null);
        hall.model.load();
        hall.model.preparing().relaunchProperty().set(true);
        wind(0.0026);
        while (answers.waiting() > 0) {
            answers.arriveOne();
            hall.model
                    .outlookProperty()
                    .get()
                    .ifPresent(outlook ->
                            assertThat(hall.data().prepared().rigged()).isNotNull());
        }
        answers.arrive();
        assertThat(hall.model.outlookProperty().get()).isEmpty();
    }

    @Test
    void anotherModelHasNothingOfTheOneBefore() {
        assertThat(words()).contains("from 4 flights of Teasel");
        answers.slow();
        String marram = hall.data().models().stream()
                .filter(m -> m.name().equals("Marram"))
                .findFirst()
                .orElseThrow()
                .id();
        hall.model.preparing().choose(marram);
        while (answers.waiting() > 0) {
            answers.arriveOne();
            if (words().contains("Marram M")) {
                assertThat(words()).doesNotContain("flights of Teasel");
            }
        }
        answers.arrive();
        assertThat(words()).contains("Cannot tell yet what to expect: 0 flights of Marram");
    }

    @Test
    void aSpoiltFlightMovesWhatIsExpectedLittleAndOneMoreFlightIsCounted() {
        assertThat(words()).contains("from 4 flights");
        double before = Objects.requireNonNull(
                        hall.model.outlookProperty().get().orElseThrow().expected())
                .durationS();
        hall.model.preparing().typed(typed(Quantity.TIME, "2 s"), () -> {}, failure -> {
            throw new AssertionError(failure);
        });
        hall.model.landing().done();
        assertThat(words()).contains("from 5 flights");
        double after = Objects.requireNonNull(
                        hall.model.outlookProperty().get().orElseThrow().expected())
                .durationS();
        assertThat(after).isBetween(before - 20, before + 20);
    }
}
