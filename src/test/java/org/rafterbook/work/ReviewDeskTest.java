package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.Recovered;
import org.rafterbook.flight.Trial;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.review.Answer;
import org.rafterbook.review.Ceiling;
import org.rafterbook.review.Comparison;
import org.rafterbook.review.Outcome;
import org.rafterbook.review.SameDayResult;
import org.rafterbook.review.Word;

class ReviewDeskTest {

    @TempDir
    Path folder;

    private ReviewEvenings evenings;
    private SettingDef wing;

    @BeforeEach
    void open() {
        evenings = new ReviewEvenings(folder.resolve("a.rafterbook"));
        wing = evenings.setting("wing edge", "LENGTH", "mm");
        evenings.trim(wing, 0.149);
    }

    @AfterEach
    void close() {
        evenings.close();
    }

    private ModelReview review() {
        MarginPercent margins = (version, motor, fraction) -> motor == null ? null : 5.0;
        return new ReviewDesk(evenings.book(), margins).review(evenings.model().id(), false, Progress.none());
    }

    /** A-B-A-B, two flights each; the second of the last block touched and was cut short. */
    private void evening() {
        evenings.fly(500);
        evenings.fly(510, Ending.CLEAN, null, "Floats at the top.", 1400);
        evenings.trim(wing, 0.146);
        evenings.fly(540);
        evenings.fly(550);
        evenings.trim(wing, 0.149);
        evenings.fly(505);
        evenings.fly(495, Ending.CLEAN, null, "", 1400, Recovered.NO);
        evenings.trim(wing, 0.146);
        evenings.fly(545, Ending.CLEAN, null, "", 1400, Recovered.YES);
        evenings.fly(560, Ending.TOUCHED, CutShort.YES, "Touched the lamp.", 1400);
    }

    @Test
    void anEveningThereAndBackIsEightPointsFourRiggingsTwoVersionsThreeChanges() {
        evening();
        ModelReview answer = review();
        assertThat(answer.points()).hasSize(8);
        assertThat(answer.riggings()).hasSize(4);
        assertThat(answer.versions()).isEqualTo(2);
        assertThat(answer.trimChanges()).isEqualTo(3);
        assertThat(answer.counted()).isEqualTo(8);
        assertThat(answer.atLeast()).isEqualTo(1);
        assertThat(answer.points().get(7).flight().outcome().kind()).isEqualTo(Outcome.Kind.AT_LEAST);
        assertThat(answer.riggings().get(1).changes()).containsExactly("wing edge 146 mm, was 149");
        assertThat(answer.riggings()).extracting(ReviewRigging::back).containsExactly(false, false, true, true);
        assertThat(answer.points().get(1).flight().notes()).isEqualTo("Floats at the top.");
    }

    @Test
    void pointsCarryMarginSettingsTurnsAirAndOrder() {
        evening();
        ReviewPoint third = review().points().get(2);
        assertThat(third.flight().marginPercent()).isEqualTo(5.0);
        assertThat(third.flight().settings().get(wing.id()).value()).isEqualTo(146.0);
        assertThat(third.flight().motor().turnsUsed()).isEqualTo(1300.0);
        assertThat(third.flight().motor().windsBefore()).isEqualTo(2);
        assertThat(third.flight().orderInSession()).isEqualTo(3);
        assertThat(third.flight().humidityAssumed()).isTrue();
        // dry and damp air of 21 degrees and 1013 hPa lie between 1.18 and 1.21 kg/m3
        assertThat(Objects.requireNonNull(third.flight().densityKgM3())).isBetween(1.18, 1.21);
    }

    @Test
    void theTwoValuesAreComparedOnceOnTheirDay() {
        evening();
        ModelReview answer = review();
        assertThat(answer.changes()).hasSize(1);
        ReviewChange change = answer.changes().get(0);
        SameDayResult sameDay = Objects.requireNonNull(change.sameDay());
        assertThat(change.comparison()).isEqualTo(Comparison.SAME_DAY);
        assertThat(change.from().value()).isEqualTo(149.0);
        assertThat(change.to().value()).isEqualTo(146.0);
        assertThat(change.flightsFrom()).isEqualTo(4);
        assertThat(change.flightsTo()).isEqualTo(3);
        assertThat(change.commonDays()).isEqualTo(1);
        assertThat(sameDay.flightsTo()).isEqualTo(3);
        assertThat(sameDay.orderNotMixed()).isFalse();
        // exact: mean of logarithms over the seven clean flights, turns and air being equal
        double effect = (Math.log(540) + Math.log(550) + Math.log(545)) / 3
                - (Math.log(500) + Math.log(510) + Math.log(505) + Math.log(495)) / 4;
        assertThat(sameDay.effect()).isCloseTo(effect, within(1e-12));
        assertThat(change.word()).isEqualTo(Word.RAISED);
        assertThat(change.handlingFrom().recovered().counts()).isEqualTo("0 of 1");
        assertThat(change.handlingTo().recovered().counts()).isEqualTo("1 of 1");
    }

    @Test
    void flightsOfAnOpenTrialAreShownButEnterNothing() {
        evening();
        ModelReview before = review();
        String trial = evenings.openTrial(wing).id();
        evenings.trim(Map.of(wing.id(), Setting.of(0.143)), trial);
        evenings.fly(700);
        ModelReview answer = review();
        assertThat(answer.points()).hasSize(9);
        assertThat(answer.waiting()).isEqualTo(1);
        assertThat(answer.counted()).isEqualTo(8);
        assertThat(answer.input().flights()).hasSize(8);
        assertThat(answer.changes()).isEqualTo(before.changes());
    }

    @Test
    void aTrialJudgedWithOneValueFlownSaysInTheDocumentWhyItHasNoAnswer() {
        evening();
        String trial = evenings.openTrial(wing).id();
        evenings.trim(Map.of(wing.id(), Setting.of(0.143)), trial);
        evenings.fly(700);
        evenings.book().trials().judge(evenings.model().id(), "hall closed");
        Map<?, ?> model = (Map<?, ?>) ((List<?>) Objects.requireNonNull(
                        ReviewDocument.of(List.of(review())).get("models")))
                .get(0);
        Map<?, ?> told = (Map<?, ?>) ((List<?>) model.get("trials")).get(0);
        assertThat(told.get("effect_percent")).isNull();
        assertThat(told.get("ended_early")).isEqualTo(true);
        assertThat(told.get("ended_why")).isEqualTo("hall closed");
        assertThat(told.get("seed"))
                .isEqualTo(evenings.book()
                        .logbook()
                        .read(r -> r.get(Trial.class, trial))
                        .seed());
        assertThat(told.get("missing"))
                .isEqualTo("No day holds a clean flight with each value and everything else equal.");
    }

    @Test
    void valuesFlownOnDifferentDaysAreNotComparedOnOneDay() {
        evenings.fly(500);
        evenings.fly(505);
        evenings.evening("2026-01-27");
        evenings.trim(wing, 0.146);
        evenings.fly(550);
        evenings.fly(545);
        evenings.evening("2026-02-03");
        evenings.trim(wing, 0.149);
        evenings.fly(510);
        ReviewChange change = review().changes().get(0);
        assertThat(change.comparison()).isEqualTo(Comparison.ACROSS_DAYS);
        assertThat(change.sameDay()).isNull();
        assertThat(ReviewWords.sameDayMissing(change)).contains("ot compared on one day");
    }

    @Test
    void settingsAlwaysChangedTogetherCannotBeToldApart() {
        SettingDef pitch = evenings.setting("pitch", "LENGTH", "mm");
        evenings.trim(Map.of(wing.id(), Setting.of(0.149), pitch.id(), Setting.of(0.6)), null);
        evenings.fly(500);
        evenings.fly(505);
        evenings.trim(Map.of(wing.id(), Setting.of(0.146), pitch.id(), Setting.of(0.65)), null);
        evenings.fly(550);
        evenings.fly(545);
        List<ReviewChange> changes = review().changes();
        assertThat(changes).hasSize(2);
        assertThat(changes)
                .extracting(ReviewChange::word)
                .containsExactly(Word.CANNOT_BE_TOLD_APART, Word.CANNOT_BE_TOLD_APART);
        assertThat(changes.get(0).togetherWith()).hasSize(1);
    }

    @Test
    void aValueWithoutACleanFlightHasNoAnswerYet() {
        evenings.fly(500);
        evenings.trim(wing, 0.146);
        evenings.fly(300, Ending.TOUCHED, CutShort.YES, "", 1400);
        ReviewChange change = review().changes().get(0);
        assertThat(change.comparison()).isEqualTo(Comparison.ONE_SIDE_UNFLOWN);
        assertThat(ReviewWords.missing(change)).contains("146 mm");
    }

    @Test
    void allOfOneValueFirstIsSaid() {
        evenings.fly(500);
        evenings.fly(505);
        evenings.trim(wing, 0.146);
        evenings.fly(540);
        evenings.fly(552);
        ModelReview answer = review();
        assertThat(ReviewWords.sentences(answer.changes().get(0)))
                .anyMatch(s -> s.toLowerCase(java.util.Locale.ROOT).contains("order not mixed"));
    }

    @Test
    void oneFlightOfEachGivesNoInterval() {
        evenings.fly(500);
        evenings.trim(wing, 0.146);
        evenings.fly(540);
        ReviewChange change = review().changes().get(0);
        assertThat(Objects.requireNonNull(change.sameDay()).lowPercent()).isNull();
        assertThat(ReviewWords.sentences(change)).anyMatch(s -> s.contains("too few flights for an interval"));
    }

    @Test
    void aSteerWithoutItsSecondLeavesTheFlightOut() {
        String flight = evenings.fly(500).id();
        evenings.book()
                .logbook()
                .enter(
                        "steer",
                        w -> w.insert(new FlightEvent(
                                Logbook.newId(), flight, FlightEventKind.STEERED, null, null, null, "by pole")));
        ModelReview answer = review();
        assertThat(answer.leftOut()).hasSize(1);
        assertThat(answer.points().get(0).flight().notes()).isEqualTo("by pole");
    }

    @Test
    void whatWasComputedIsKeptUntilItsInputsChange() {
        evening();
        AtomicInteger steps = new AtomicInteger();
        ModelReview first = review(steps);
        assertThat(steps.getAndSet(0)).isPositive();

        ModelReview again = review(steps);
        assertThat(steps.get()).isZero();
        assertThat(again.changes()).isEqualTo(first.changes());
        assertThat(again.plans()).isEqualTo(first.plans());
        assertThat(again.season()).isEqualTo(first.season());
        assertThat(again.remarks()).isEqualTo(first.remarks());

        evenings.fly(530);
        assertThat(review(steps).changes()).isNotEqualTo(first.changes());
        assertThat(steps.get()).isPositive();
    }

    private ModelReview review(AtomicInteger steps) {
        Progress counted = new Progress() {
            @Override
            public void step(long done, long total, String of) {
                steps.addAndGet(of.equals(Step.PERCENT) ? 1 : 0);
            }

            @Override
            public void check() {}

            @Override
            public boolean cancelled() {
                return false;
            }
        };
        return new ReviewDesk(evenings.book(), MarginPercent.NONE)
                .review(evenings.model().id(), false, counted);
    }

    @Test
    void leavingStopsTheComputationAndKeepsNothing() {
        evening();
        Steps progress = new Steps(step -> {
            if (step.done() > 20) {
                throw new CancellationException();
            }
        });
        ReviewDesk desk = new ReviewDesk(evenings.book(), MarginPercent.NONE);
        assertThatThrownBy(() -> desk.review(evenings.model().id(), false, progress))
                .isInstanceOf(CancellationException.class);
        AtomicInteger steps = new AtomicInteger();
        review(steps);
        assertThat(steps.get()).isPositive();
    }

    @Test
    void marginsAreToldOneByOneAndTheirComputingCanBeStopped() {
        evening();
        List<Step> told = new ArrayList<>();
        ReviewDesk desk = new ReviewDesk(evenings.book(), MarginPercent.NONE);
        desk.atOnce(evenings.model().id(), false, new Steps(told::add));
        assertThat(told).containsExactly(new Step(0, 2, "margins"), new Step(1, 2, "margins"));

        AtomicInteger computed = new AtomicInteger();
        List<Steps> running = new ArrayList<>();
        running.add(new Steps(step -> {}));
        MarginPercent stopping = (version, motor, fraction) -> {
            computed.incrementAndGet();
            running.get(0).cancel();
            return null;
        };
        assertThatThrownBy(() -> new ReviewDesk(evenings.book(), stopping)
                        .atOnce(evenings.model().id(), false, running.get(0)))
                .isInstanceOf(CancellationException.class);
        assertThat(computed.get()).isEqualTo(1);
    }

    @Test
    void theSameDayComparisonDoesNotWaitForMarginsThatHaveToBeComputed() {
        evening();
        AtomicInteger computed = new AtomicInteger();
        MarginPercent slow = new MarginPercent() {
            @Override
            public Double percent(String versionId, @Nullable String motorId, double fraction) {
                computed.incrementAndGet();
                return 5.0;
            }

            @Override
            public boolean isQuick(Version version) {
                return computed.get() > 0;
            }
        };
        ReviewDesk desk = new ReviewDesk(evenings.book(), slow);
        String model = evenings.model().id();

        ModelReview first = desk.atOnce(model, false, Progress.none());
        assertThat(computed.get()).isZero();
        assertThat(first.marginsOpen()).isTrue();
        ModelReview whole = desk.review(model, false, Progress.none());
        assertThat(first.changes())
                .extracting(ReviewChange::sameDay)
                .isEqualTo(whole.changes().stream().map(ReviewChange::sameDay).toList());
        assertThat(first.points()).extracting(p -> p.flight().marginPercent()).containsOnlyNulls();
        assertThat(whole.points()).extracting(p -> p.flight().marginPercent()).containsOnly(5.0);

        ModelReview again = desk.atOnce(model, false, Progress.none());
        assertThat(again.marginsOpen()).isFalse();
        assertThat(again).isEqualTo(whole);
    }

    @Test
    void settingsThatMoveTheMarginAreFoundByTheSheetOrByTheMarginItself() {
        SettingDef ballast = evenings.setting("ballast", "MASS", "g");
        evenings.trim(Map.of(ballast.id(), Setting.of(0.0)), null);
        evenings.fly(500);
        evenings.trim(Map.of(ballast.id(), Setting.of(0.0001)), null);
        evenings.fly(500);
        evenings.trim(wing, 0.146);
        MarginPercent margins = (version, motor, fraction) -> {
            Double mass = evenings.book().riggings().version(version).values().containsKey(ballast.id())
                    ? evenings.book()
                            .riggings()
                            .version(version)
                            .values()
                            .get(ballast.id())
                            .number()
                    : null;
            return mass == null ? null : 5 + 10_000 * mass;
        };
        ReviewReading reading =
                new ReviewDesk(evenings.book(), margins).read(evenings.model().id(), Progress.none());
        assertThat(MarginMovers.of(reading.versions(), margins, null)).containsExactly(ballast.id());
    }

    @Test
    void theTorqueForAChanceOfTouchingIsToldForWhatIsInTheWay() {
        assertThat(words(review().ceiling())).startsWith("What is in the way where the model flew last has no known");
        evenings.venue(7.9);
        evenings.fly(500);
        assertThat(words(review().ceiling())).startsWith("Launch torque and peak height are known together for 0");
        for (int i = 0; i < 8; i++) {
            double torque = 0.0022 + 0.0001 * i;
            evenings.flyHigh(500 + i, torque, 7.8 * torque / 0.0027, i > 5);
        }
        Answer<TouchRisk> ceiling = Objects.requireNonNull(review().ceiling());
        TouchRisk risk = ((Answer.Known<TouchRisk>) ceiling).value();
        assertThat(ReviewText.of(List.of(review()))).contains(risk.limit().name() + ", with " + risk.trim() + ": ");
        assertThat(risk.trim())
                .isEqualTo(evenings.book().riggings().now(evenings.model().id()).name());
        assertThat(risk.limit().name()).isEqualTo("lamps");
        assertThat(risk.ceiling().told()).hasSize(8);
        assertThat(risk.ceiling().told().stream().filter(Ceiling.Told::reached)).hasSize(2);
        assertThat(review().ceiling()).isEqualTo(ceiling);
    }

    private static String words(@Nullable Answer<TouchRisk> answer) {
        return answer instanceof Answer.CannotTell<TouchRisk> open ? open.sentence() : "known";
    }

    @Test
    void aFlagOfAfterTheTimeLeavesTheFlightOutOnlyWhereTheFlyerSaysSo() {
        evening();
        String flight = review().points().get(0).flight().id();
        evenings.book().hall().answers().leaveOut(flight, "balloon in the way");
        ModelReview counted = review();
        assertThat(counted.leftOut()).isEmpty();
        FlightFlag flag = Objects.requireNonNull(counted.flagged().get(0).flag());
        assertThat(flag.why()).isEqualTo("balloon in the way");
        assertThat(flag.by()).isEqualTo(System.getProperty("user.name"));
        ScreenChoices.keep(evenings.book(), ScreenChoices.Name.FLYER, "R. Aldous");
        assertThat(evenings.book().hall().answers().leaveOut(flight, "balloon").leftOutBy())
                .isEqualTo("R. Aldous");
        evenings.book().undo();
        assertThat(flag.at()).isNotNull();
        assertThat(flag.beforeTime()).isFalse();
        assertThat(counted.points().get(0).flight().outcome().reason())
                .isEqualTo("balloon in the way: flagged after its time was known, so it counts as flown");

        new ReviewDesk(evenings.book(), MarginPercent.NONE)
                .countLateFlags(evenings.model().id(), true);
        ModelReview without = review();
        assertThat(without.leftOut()).hasSize(1);
        assertThat(without.lateFlags()).isTrue();
        assertThat(without.leftOut().get(0).flight().outcome().reason())
                .isEqualTo("balloon in the way: left out by the flyer although flagged after its time was known");
    }

    @Test
    void theDocumentHoldsTheAnswerWithItsKeys() {
        evening();
        ModelReview answer = review();
        Map<String, ?> document = ReviewDocument.of(List.of(answer));
        Map<?, ?> change = (Map<?, ?>) ((List<?>) Objects.requireNonNull(document.get("changes"))).get(0);
        assertThat(change.get("model")).isEqualTo("Teasel");
        assertThat(change.get("setting")).isEqualTo("wing edge");
        assertThat(change.get("from")).isEqualTo(149.0);
        assertThat(change.get("to")).isEqualTo(146.0);
        assertThat(change.get("comparison")).isEqualTo("same day");
        assertThat(change.get("effect_percent"))
                .isEqualTo(answer.changes().get(0).effectPercent());
        assertThat(change.get("word")).isEqualTo("raised");
        assertThat(change.get("flights_from")).isEqualTo(4);
        assertThat(change.get("flights_to")).isEqualTo(3);
        assertThat(change.get("common_days")).isEqualTo(1);
        assertThat(change.get("together_with")).isEqualTo(List.of());
        assertThat(change.containsKey("missing")).isFalse();
    }

    @Test
    void theDocumentHoldsCurvesProposalsHandlingAndWhatIsInTheWay() {
        evening();
        evenings.trim(wing, 0.143);
        evenings.fly(530);
        evenings.fly(535);
        ModelReview answer = review();
        Map<?, ?> model = (Map<?, ?>) ((List<?>) Objects.requireNonNull(
                        ReviewDocument.of(List.of(answer)).get("models")))
                .get(0);
        List<?> curves = (List<?>) Objects.requireNonNull(model.get("curves"));
        assertThat(((Map<?, ?>) curves.get(0)).get("missing"))
                .isEqualTo("Only 5 % was flown for stability margin. A curve needs three values: fly two more.");
        Map<?, ?> along = (Map<?, ?>) curves.get(1);
        assertThat(along.get("of")).isEqualTo("wing edge");
        assertThat(along.get("flights")).isEqualTo(10);
        assertThat(along.get("flown_low")).isEqualTo(143.0);
        assertThat((List<?>) along.get("curve")).isNotEmpty();
        assertThat((List<?>) model.get("proposals")).isNotEmpty();
        assertThat(((Map<?, ?>) model.get("touching")).get("missing")).isNotNull();
        Map<?, ?> first = (Map<?, ?>) ((List<?>) model.get("handling")).get(0);
        assertThat(first.get("of")).isEqualTo("margin");
        assertThat(first.get("upsets")).isEqualTo(2);
        assertThat(first.get("upsets_recovered")).isEqualTo(1);
    }

    @Test
    void aSettingTiedToTheSheetIsNamedAsItsColumn() {
        SettingDef tied = evenings.book()
                .riggings()
                .addSetting(evenings.model().id(), "Tail incidence", "ANGLE", "°", null, null, "tail.incidence_deg");
        evenings.trim(Map.of(tied.id(), Setting.of(0.0)), null);
        evenings.fly(500);
        evenings.trim(tied, Math.toRadians(-0.5));
        evenings.fly(520);
        List<?> changes = (List<?>)
                Objects.requireNonNull(ReviewDocument.of(List.of(review())).get("changes"));
        assertThat(((Map<?, ?>) changes.get(0)).get("setting")).isEqualTo("tail.incidence_deg");
        assertThat(((Map<?, ?>) changes.get(0)).get("label")).isEqualTo("Tail incidence");
        assertThat(((Map<?, ?>) changes.get(0)).get("to")).isEqualTo(-0.5);
    }

    @Test
    void theTextSaysTheVerdictAndWhatItRestsOn() {
        evening();
        assertThat(ReviewText.of(List.of(review())))
                .contains("4 flights and 3 on 1 day")
                .contains("+8 % (90 % interval +7 to +10 %)")
                .contains("8 flights on 2 versions, 4 riggings, 3 changes");
        assertThat(ReviewText.of(List.of())).contains("No flights yet");
    }

    @Test
    void theModelFlownLastComesFirst() {
        evenings.book().riggings().addModel("Aster");
        assertThat(new ReviewDesk(evenings.book(), MarginPercent.NONE).models()).isEmpty();
        evenings.fly(500);
        assertThat(new ReviewDesk(evenings.book(), MarginPercent.NONE).models()).containsExactly(evenings.model());
    }

    @Test
    void aChangeWithAnOpenTrialBetweenKeepsItsVersions() {
        evenings.fly(500);
        evenings.fly(505);
        Trials trials = evenings.book().trials();
        String model = evenings.model().id();
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.143), 3);
        trials.setNext(model);
        evenings.fly(520);
        trials.setNext(model);
        evenings.fly(525);
        evenings.trim(wing, 0.146);
        evenings.fly(540);
        evenings.fly(545);
        ReviewChange change = review().changes().stream()
                .filter(c -> Objects.equals(c.to().value(), 146.0))
                .findFirst()
                .orElseThrow();
        assertThat(change.from().value()).isEqualTo(149.0);
        assertThat(change.fromVersion()).isEqualTo(2);
        assertThat(change.toVersion()).isEqualTo(4).isNotEqualTo(change.fromVersion());
    }

    @Test
    void whatAlwaysMovedTogetherIsToldOnceButAnsweredForEachSetting() {
        SettingDef loop = evenings.setting("loop", "LENGTH", "mm");
        SettingDef propeller = evenings.setting("propeller", "TEXT", "");
        for (int i = 0; i < 4; i++) {
            boolean other = i % 2 == 1;
            evenings.trim(
                    Map.of(
                            wing.id(), Setting.of(0.149),
                            loop.id(), Setting.of(other ? 0.36 : 0.33),
                            propeller.id(), Setting.of(other ? "300" : "320")),
                    null);
            evenings.fly(500 + 9 * i);
            evenings.fly(503 + 8 * i);
        }
        ModelReview answer = review();
        assertThat(answer.changes()).hasSize(2);
        assertThat(answer.changesToTell()).hasSize(1);
        assertThat(ReviewText.of(List.of(answer))).containsOnlyOnce("always changed together");
        Object changes = ReviewDocument.of(List.of(answer)).get("changes");
        assertThat((List<?>) changes).hasSize(2);
        assertThat(changes.toString()).contains("from=320.0, to=300.0");
    }

    @Test
    void theBasisOfAChangeTellsFlightsDaysAndVersionsAtEachValue() {
        evening();
        ModelReview answer = review();
        assertThat(ReviewWords.basis(answer, answer.changes().get(0)))
                .containsExactly(
                        "What \u201cwing edge 149 \u2192 146 mm\u201d rests on:",
                        "At 149 mm: 4 clean flights on 1 day; flown on t2.",
                        "At 146 mm: 3 clean flights on 1 day, 1 cut short and counted as \u201cat least\u201d; flown on"
                                + " t3.",
                        "Clean flights at both on 20 Jan 2026.");
    }
}
