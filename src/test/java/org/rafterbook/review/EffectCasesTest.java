package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Small seasons, each with one thing to be noticed. */
class EffectCasesTest {

    @Test
    void thereAndBackIsOneChange() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(600, "wing", 2).fly(610, "wing", 2.5).fly(605, "wing", 2).fly(612, "wing", 2.5);
        ReviewAnswer answer = Effects.of(season.input());
        assertThat(answer.changes()).hasSize(1);
        assertThat(answer.changes().get(0).from()).isEqualTo(Level.number(2));
        assertThat(answer.changes().get(0).comparison()).isEqualTo(Comparison.SAME_DAY);
    }

    @Test
    void valuesNeverChangedDirectlyIntoEachOtherAreNotListed() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(600, "wing", 1).fly(610, "wing", 2).fly(605, "wing", 3);
        assertThat(Effects.of(season.input()).changes()).hasSize(2);
    }

    @Test
    void valueWithOnlyTouchedFlightsHasNoAnswerYet() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(600, "wing", 2).fly(610, "wing", 2).touch(640, "wing", 2.5).touch(650, "wing", 2.5);
        ChangeEffect change = only(season);
        assertThat(change.comparison()).isEqualTo(Comparison.ONE_SIDE_UNFLOWN);
        assertThat(change.word()).isEqualTo(Word.NO_ANSWER_YET);
        assertThat(change.effect()).isNull();
        assertThat(change.flightsTo()).isZero();
        assertThat(change.atLeastTo()).isEqualTo(2);
        assertThat(change.statement())
                .contains(
                        "no clean flight at 2.5 yet, 2 flights there were cut short and say only \u201cat least\u201d");
    }

    @Test
    void cutShortFlightsOfBothValuesAreCountedWhereNeitherHasACleanOne() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.touch(600, "wing", 2).touch(640, "wing", 2.5).touch(650, "wing", 2.5);
        assertThat(only(season).statement()).contains("no clean flight at either value yet, 3 flights there were cut");
    }

    @Test
    void changeMadeButNotFlownHasNoAnswerYet() {
        SeasonBuilder season = new SeasonBuilder().day(0).fly(600, "wing", 2).fly(610, "wing", 2);
        ReviewInput flown = season.input();
        Map<String, Level> two = Map.of("wing", Level.number(2));
        Map<String, Level> three = Map.of("wing", Level.number(3));
        ReviewInput input = new ReviewInput(
                "Teasel", flown.flights(), flown.settings(), TrimStep.between(List.of(two, three)), false);
        ChangeEffect change = Effects.of(input).changes().get(0);
        assertThat(change.comparison()).isEqualTo(Comparison.ONE_SIDE_UNFLOWN);
        assertThat(change.statement()).contains("no flight at 3 counts yet");
    }

    @Test
    void oneChangeBetweenTwoDaysCannotBeToldFromTheDate() {
        SeasonBuilder season = new SeasonBuilder();
        season.day(0).fly(600, "wing", 2).fly(610, "wing", 2).fly(605, "wing", 2);
        season.day(7).fly(660, "wing", 3).fly(650, "wing", 3).fly(640, "wing", 3);
        ChangeEffect change = only(season);
        assertThat(change.comparison()).isEqualTo(Comparison.MOVED_TOGETHER);
        assertThat(change.effect()).isNull();
        assertThat(change.togetherWith()).containsExactly("date");
        assertThat(change.word()).isEqualTo(Word.CANNOT_BE_TOLD_APART);
    }

    @Test
    void settingsMovedTogetherAndThenApartAreToldApart() {
        SeasonBuilder season = new SeasonBuilder();
        season.day(0).fly(600, "wing", 1, "pitch", 1).fly(605, "wing", 1, "pitch", 1);
        season.fly(640, "wing", 2, "pitch", 2).fly(650, "wing", 2, "pitch", 2);
        season.day(7).fly(600, "wing", 1, "pitch", 2).fly(605, "wing", 1, "pitch", 1);
        season.fly(601, "wing", 1, "pitch", 2).fly(604, "wing", 1, "pitch", 1);
        assertThat(Effects.of(season.input()).changes())
                .extracting(ChangeEffect::comparison)
                .containsOnly(Comparison.SAME_DAY);
    }

    @Test
    void changeThatAlwaysWentWithAMotorMovedTogetherWithIt() {
        ChangeEffect change = only(motors("m1", "m1", "m2", "m2"));
        assertThat(change.comparison()).isEqualTo(Comparison.MOVED_TOGETHER);
        assertThat(change.togetherWith()).containsExactly("motor");
        assertThat(change.effect()).isNotNull();
        assertThat(change.statement()).contains("wing 1 \u2192 2 and the motor always changed together");
    }

    @Test
    void motorFlownOnBothSidesTellsTheChangeFromIt() {
        assertThat(only(motors("m1", "m2", "m2", "m1")).comparison()).isEqualTo(Comparison.SAME_DAY);
    }

    @Test
    void severalMotorsOnEachSideStandForTheStock() {
        assertThat(only(motors("m1", "m2", "m3", "m4")).comparison()).isEqualTo(Comparison.SAME_DAY);
    }

    @Test
    void turnsNotedAtOneValueOnlyMoveTogetherWithIt() {
        SeasonBuilder season = new SeasonBuilder();
        for (int day = 0; day < 3; day++) {
            season.day(7 * day);
            for (int i = 0; i < 6; i++) {
                boolean noted = i % 2 == 1;
                season.fly(
                        Outcome.exact((noted ? 530 : 485) + (i * 29 + day * 7) % 17),
                        noted ? 1100.0 : null,
                        "wing",
                        noted ? 3 : 2);
            }
        }
        ChangeEffect change = only(season);
        assertThat(change.comparison()).isEqualTo(Comparison.MOVED_TOGETHER);
        assertThat(change.togetherWith()).containsExactly("turns");
        assertThat(change.effect()).isNull();
        assertThat(change.sentences())
                .contains("Turns are noted at 3 only, not at 2: what was not noted cannot be held equal."
                        + " Note it with both.");
    }

    @Test
    void turnsMissingOnSomeFlightsOfBothValuesLeaveThemToldApart() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        for (int i = 0; i < 8; i++) {
            season.fly(Outcome.exact(600 + (i * 29) % 17), i < 2 ? null : 1000.0 + i % 3, "wing", 1 + i % 2);
        }
        assertThat(only(season).comparison()).isEqualTo(Comparison.SAME_DAY);
    }

    @Test
    void motorNamedAtOneValueOnlyMovesTogetherWithIt() {
        ChangeEffect change = only(motors("", "", "m1", "m1"));
        assertThat(change.togetherWith()).containsExactly("motor");
        assertThat(change.sentences()).anyMatch(s -> s.startsWith("The motor is noted at 2 only, not at 1: "));
    }

    private static SeasonBuilder motors(String... motors) {
        SeasonBuilder season = new SeasonBuilder().day(0);
        for (int i = 0; i < motors.length; i++) {
            Map<String, Level> wing = Map.of("wing", Level.number(i < motors.length / 2 ? 1 : 2));
            String motor = motors[i].isEmpty() ? null : motors[i];
            season.add(
                    ReviewFlight.of("m" + i, "day0", SeasonBuilder.FIRST_DAY, i + 1, Outcome.exact(600 + 7 * i), wing)
                            .with(new MotorUse(motor, i, 1000.0 + i % 3, null, 1), 1.19));
        }
        return season;
    }

    @Test
    void repairedModelMovesTogetherWithAChangeMadeAtTheRepair() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        for (int i = 0; i < 6; i++) {
            ReviewFlight flight = ReviewFlight.of(
                    "b" + i,
                    "day0",
                    SeasonBuilder.FIRST_DAY,
                    i + 1,
                    Outcome.exact(600 + 3 * i),
                    Map.of("wing", Level.number(i < 3 ? 1 : 2)));
            season.add(flight.withBuild(i < 3 ? 1 : 2));
        }
        ChangeEffect change = only(season);
        assertThat(change.togetherWith()).containsExactly("build");
        assertThat(change.sameDay()).isNull();
    }

    @Test
    void clearGainOnTwoDaysIsRaisedAndConfirmedByTheLaterDay() {
        ChangeEffect change = only(clearGain(3));
        assertThat(change.word()).isEqualTo(Word.RAISED);
        Confirmation confirmation = Objects.requireNonNull(change.confirmation());
        assertThat(confirmation.laterDay()).isEqualTo(SeasonBuilder.FIRST_DAY.plusDays(7));
        assertThat(confirmation.sameDay()).isNotNull();
        assertThat(change.sentences()).anyMatch(s -> s.startsWith("Flown again from 11 Nov 2025 on"));
    }

    @Test
    void clearGainOfOneDayIsToBeConfirmed() {
        ChangeEffect change = only(clearGain(1));
        assertThat(change.word().isClaim()).isTrue();
        assertThat(Objects.requireNonNull(change.confirmation()).isToBeConfirmed())
                .isTrue();
        assertThat(change.sentences()).contains("To be confirmed: fly both values again on a later day.");
    }

    private static SeasonBuilder clearGain(int days) {
        SeasonBuilder season = new SeasonBuilder();
        for (int day = 0; day < days; day++) {
            season.day(7 * day);
            for (int i = 0; i < 10; i++) {
                season.fly((i % 2 == 0 ? 600 : 660) + (i * 29) % 11, "wing", 1 + i % 2);
            }
        }
        return season;
    }

    @Test
    void valueWithManyTouchesIsCeilingLimited() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(600, "wing", 1).fly(610, "wing", 2).fly(605, "wing", 1).touch(600, "wing", 2);
        ChangeEffect change = only(season);
        assertThat(change.ceilingLimited()).isTrue();
        assertThat(change.sentences()).anyMatch(s -> s.startsWith("Ceiling-limited"));
    }

    @Test
    void moreTurnsAreTakenOutAndSaid() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        for (int i = 0; i < 10; i++) {
            double turns = (i % 2 == 0 ? 1000 : 1050) + (i * 13) % 7;
            season.fly(Outcome.exact(0.6 * turns + (i * 29) % 11), turns, "wing", 1 + i % 2);
        }
        ChangeEffect change = only(season);
        assertThat(change.sentences()).anyMatch(s -> s.startsWith("2 was flown on about 5 % more turns: of the "));
        assertThat(Math.abs(Objects.requireNonNull(change.effect()).effectPercent()))
                .isLessThan(2);
    }

    @Test
    void twoWaysOfLookingThatDisagreeAreNamed() {
        SeasonBuilder season = new SeasonBuilder();
        season.day(0)
                .fly(600, "wing", 1)
                .fly(600.5, "wing", 1)
                .fly(690, "wing", 2)
                .fly(690.5, "wing", 2);
        for (int day = 1; day < 8; day++) {
            season.day(7 * day);
            for (int i = 0; i < 6; i++) {
                season.fly((day % 2 == 0 ? 640 : 610) + (i * 29) % 17, "wing", day % 2 == 0 ? 1 : 2);
            }
        }
        assertThat(only(season).sentences())
                .contains("The two ways of looking disagree: repeat A-B-A-B on one day.")
                .anyMatch(s -> s.startsWith("Order not mixed"));
    }

    private static ChangeEffect only(SeasonBuilder season) {
        ReviewAnswer answer = Effects.of(season.input());
        assertThat(answer.changes()).hasSize(1);
        return answer.changes().get(0);
    }
}
