package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Trial;
import org.rafterbook.review.SeasonPlans;
import org.rafterbook.review.TrialPlan.Side;
import org.rafterbook.review.TrialProposal;
import org.rafterbook.review.TrialStatement;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.UserError;

/** A trial from the open question to its statement, on a real logbook. */
class TrialsTest {

    @TempDir
    Path folder;

    private ReviewEvenings evenings;
    private SettingDef wing;
    private SettingDef incidence;
    private Trials trials;
    private String model;

    @BeforeEach
    void open() {
        evenings = new ReviewEvenings(folder.resolve("a.rafterbook"));
        model = evenings.model().id();
        wing = evenings.setting("wing edge", "LENGTH", "mm");
        incidence = evenings.setting("wing incidence", "ANGLE", "°");
        evenings.trim(Map.of(wing.id(), Setting.of(0.149), incidence.id(), Setting.of(Math.toRadians(2.5))), null);
        trials = evenings.book().trials();
    }

    @AfterEach
    void close() {
        evenings.close();
    }

    private ModelReview review() {
        return new ReviewDesk(evenings.book(), MarginPercent.NONE).review(model, false, Progress.none());
    }

    private void flyBoth() {
        evenings.fly(500);
        evenings.fly(515);
        evenings.trim(wing, 0.146);
        evenings.fly(520);
        evenings.fly(505);
    }

    private TrialNow now() {
        return trials.now(model).orElseThrow();
    }

    private void flyNext(double seconds) {
        trials.setNext(model);
        evenings.fly(seconds);
    }

    private Flight launch(double seconds) {
        return evenings.book()
                .hall()
                .flying()
                .typed(
                        Launch.of(model, null, null),
                        QuantityParser.typed(Quantity.TIME, DisplayUnits.METRIC)
                                .read(seconds + " s")
                                .orThrow());
    }

    private void stand(Side side) {
        evenings.trim(wing, side == Side.A ? 0.149 : 0.146);
    }

    @Test
    void aLaunchWithTheRightSettingFillsItsPlaceHoweverTheModelCameToStandThere() {
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 3);
        Side first = Objects.requireNonNull(now().nextSide());
        stand(first);
        assertThat(now().set()).isTrue();
        assertThat(now().counts()).isTrue();
        launch(500);
        assertThat(now().state().flown()).isEqualTo(1);
        assertThat(trials.landed(
                        model,
                        evenings.book()
                                .hall()
                                .evening()
                                .flights()
                                .get(0)
                                .flight()
                                .id()))
                .isTrue();
        assertThat(now().set()).isTrue();
    }

    @Test
    void aLaunchOnAnotherSettingDoesNotCountForTheTrial() {
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 3);
        evenings.trim(wing, 0.140);
        assertThat(now().counts()).isFalse();
        Flight flight = launch(500);
        assertThat(now().state().flown()).isZero();
        assertThat(trials.landed(model, flight.id())).isFalse();
        stand(Objects.requireNonNull(now().nextSide()) == Side.A ? Side.B : Side.A);
        assertThat(now().counts()).isFalse();

        flyNext(500);
        trials.setNext(model);
        evenings.book().hall().set(model, incidence.id(), Setting.of(Math.toRadians(3)));
        assertThat(now().counts()).isFalse();
    }

    @Test
    void aTrialTurnedToItsOtherValueByHandCountsForThatValue() {
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 3);
        trials.setNext(model);
        boolean a = now().nextSide() == Side.A;
        evenings.book().hall().set(model, wing.id(), Setting.of(a ? 0.146 : 0.149));
        assertThat(now().set()).isFalse();
        assertThat(now().counts()).isTrue();
        launch(500);
        assertThat(now().state().flown(a ? Side.B : Side.A)).isEqualTo(1);
    }

    @Test
    void theHallGoesOnWithTheModelOnTrial() {
        evenings.book().hall().addModel("Marram");
        assertThat(Objects.requireNonNull(evenings.book().hall().prepare().rigged())
                        .model()
                        .name())
                .isEqualTo("Marram");
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 3);
        assertThat(Objects.requireNonNull(evenings.book().hall().prepare().rigged())
                        .model()
                        .id())
                .isEqualTo(model);
    }

    @Test
    void theOpenQuestionBecomesATrialThatIsFlownAndJudged() {
        flyBoth();
        SeasonPlans plans = Objects.requireNonNull(review().plans());
        TrialProposal proposal = plans.proposals().get(0);
        assertThat(proposal.title()).isEqualTo("Trial: wing edge 149 or 146 mm.");
        assertThat(proposal.sentences().get(2))
                .startsWith("3 + 3 flights on one day would bring the interval to about ±");

        Trial trial = trials.open(model, proposal);
        assertThat(trial.numberA()).isEqualTo(0.149);
        assertThat(trial.numberB()).isEqualTo(0.146);
        assertThat(trial.drawnOrder()).hasSize(6).matches("(AB|BA){3}");

        ModelReview before = review();
        for (int i = 0; i < 6; i++) {
            Side side = Objects.requireNonNull(now().nextSide());
            flyNext(side == Side.A ? 500 + i : 560 + i);
            assertThat(now().state().flown()).isEqualTo(i + 1);
        }
        assertThat(now().state().isComplete()).isTrue();
        ModelReview waiting = review();
        assertThat(waiting.waiting()).isEqualTo(6);
        assertThat(waiting.changes()).isEqualTo(before.changes());
        assertThat(waiting.openTrial()).isPresent();
        assertThat(waiting.trials().get(0).statement()).isNull();

        trials.judge(model, null);
        assertThat(trials.now(model)).isEmpty();
        ModelReview judged = review();
        assertThat(judged.waiting()).isZero();
        assertThat(judged.input().flights()).hasSize(10);
        TrialStatement statement = Objects.requireNonNull(judged.trials().get(0).statement());
        assertThat(statement.sentences().get(0))
                .startsWith("Trial: wing edge at 149 or 146 mm, 3 + 3 flown: 146 mm against 149 mm +")
                .endsWith("from 3 + 3 clean flights on 1 day, these flights alone.");
        assertThat(statement.sentences())
                .anyMatch(s -> s.startsWith("With all flights of Teasel: wing edge 149 → 146"));
    }

    @Test
    void theNextValueComesBackAsTheVersionFlownBefore() {
        flyBoth();
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 2);
        int riggings = evenings.book().riggings().strip(model).size();
        Rigged set = trials.setNext(model);
        assertThat(set.rigging().trialId()).isEqualTo(now().trial().id());
        assertThat(now().set()).isTrue();
        assertThat(List.of(now().versionA().number(), now().versionB().number()))
                .contains(set.version().number());
        assertThat(evenings.book().riggings().strip(model)).hasSize(riggings + 1);
        trials.setNext(model);
        assertThat(evenings.book().riggings().strip(model)).hasSize(riggings + 1);
    }

    @Test
    void aValueNeverFlownMakesItsVersionWhenItIsSet() {
        evenings.fly(500);
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.143), 2);
        assertThat(now().versionA()).isNotNull();
        assertThat(now().versionB()).isNull();
        for (int i = 0; i < 4; i++) {
            flyNext(500);
        }
        assertThat(now().versionB()).isNotNull();
        assertThat(review().trials().get(0).state().progress()).isEqualTo("4 of 4 flown");
    }

    @Test
    void oneTrialIsOpenAtATime() {
        flyBoth();
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 2);
        assertThatThrownBy(() -> trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.143), 2))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("Teasel has a trial open, wing edge at 149 or 146 mm.");
    }

    @Test
    void aValueWithinTheToleranceOfOneFlownIsThatOneSoThatItsFlightsFillTheirPlaces() {
        SettingDef tail =
                evenings.book().riggings().addSetting(model, "tail edge", "LENGTH", "mm", 0.001, 0.0005, null);
        evenings.trim(Map.of(tail.id(), Setting.of(0.4)), null);
        evenings.fly(500);
        trials.open(model, tail.id(), Setting.of(0.4002), Setting.of(0.405), 2);
        for (int i = 0; i < 4; i++) {
            flyNext(500 + i);
        }
        assertThat(now().state().flown()).isEqualTo(4);
        assertThat(now().plan().title()).isEqualTo("Trial: tail edge at 400 or 405 mm");
    }

    @Test
    void twoValuesWithinTheToleranceAreNoTrial() {
        SettingDef tail =
                evenings.book().riggings().addSetting(model, "tail edge", "LENGTH", "mm", 0.001, 0.0005, null);
        assertThatThrownBy(() -> trials.open(model, tail.id(), Setting.of(0.4), Setting.of(0.4002), 3))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("both are 400 mm");
    }

    @Test
    void aValueAgainstItselfIsNoTrial() {
        assertThatThrownBy(() -> trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.149), 3))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("both are 149 mm");
        assertThat(trials.now(model)).isEmpty();
    }

    @Test
    void whatIsTrimmedBesideTheTrialIsNoPartOfIt() {
        flyBoth();
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 2);
        flyNext(500);
        evenings.trim(incidence, Math.toRadians(3));
        evenings.fly(700);
        assertThat(now().state().flown()).isEqualTo(1);
        assertThat(now().set()).isFalse();
        Rigged back = trials.setNext(model);
        assertThat(back.values().get(incidence.id()).number()).isEqualTo(Math.toRadians(2.5));
    }

    @Test
    void turningTheTrialsSettingByHandStaysInTheTrial() {
        flyBoth();
        HallDesk hall = evenings.book().hall();
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 2);
        flyNext(500);
        Setting other = now().nextSide() == Side.A ? now().a() : now().b();
        assertThat(hall.set(model, wing.id(), other).rigging().trialId())
                .isEqualTo(now().trial().id());
        assertThat(hall.set(model, wing.id(), Setting.of(0.140)).rigging().trialId())
                .isNull();
    }

    @Test
    void aFlightThatDoesNotCountIsFlownAgainAndATouchCounts() {
        flyBoth();
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 2);
        trials.setNext(model);
        evenings.fly(300, Ending.STEERED, null, "", 1400);
        assertThat(now().state().flown()).isZero();
        assertThat(now().state().sentences()).anyMatch(s -> s.contains("its place is flown again"));
        trials.setNext(model);
        evenings.fly(450, Ending.TOUCHED, CutShort.YES, "", 1400);
        assertThat(now().state().flown()).isEqualTo(1);
    }

    @Test
    void aTrialEndedEarlySaysWhyAndWhatFliesNextIsNoPartOfIt() {
        flyBoth();
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 3);
        flyNext(500);
        flyNext(540);
        trials.judge(model, " hall closed ");
        evenings.fly(900);
        ModelReview judged = review();
        ReviewTrial trial = judged.trials().get(0);
        assertThat(Objects.requireNonNull(trial.statement()).sentences())
                .contains("Ended before all 6 were flown: hall closed.");
        assertThat(trial.state().flown()).isEqualTo(2);
        assertThat(evenings.book().riggings().now(model).rigging().trialId()).isNull();
    }

    @Test
    void judgingIsTakenBackAsOneEntry() {
        flyBoth();
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 2);
        flyNext(500);
        trials.judge(model, null);
        assertThat(evenings.book().undo().why()).isEqualTo("trial judged");
        assertThat(now().state().flown()).isEqualTo(1);
        assertThat(evenings.book().riggings().now(model).rigging().trialId())
                .isEqualTo(now().trial().id());
    }

    @Test
    void wordsAreComparedLikeNumbers() {
        SettingDef propeller = evenings.setting("propeller", "TEXT", "");
        evenings.trim(Map.of(propeller.id(), Setting.of("birch")), null);
        evenings.fly(500);
        trials.open(model, propeller.id(), Setting.of("birch"), Setting.of("balsa"), 2);
        for (int i = 0; i < 4; i++) {
            flyNext(500 + i);
        }
        assertThat(now().state().isComplete()).isTrue();
        assertThat(now().plan().title()).isEqualTo("Trial: propeller at birch or balsa");
    }
}
