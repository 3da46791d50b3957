package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Seasons that tell little or nothing: each says what can be told and what is needed next. */
class ThinSeasonsTest {

    @Test
    void noFlightsAtAll() {
        assertThat(remarks(new SeasonBuilder())).anyMatch(s -> s.contains("fewer than two flights"));
    }

    @Test
    void oneFlight() {
        assertThat(remarks(new SeasonBuilder().day(0).fly(600, "wing", 1)))
                .anyMatch(s -> s.contains("Log a second flight"));
    }

    @Test
    void oneVersionOnly() {
        SeasonBuilder season = new SeasonBuilder().day(0).fly(600, "wing", 1).fly(610, "wing", 1);
        assertThat(Effects.of(season.input()).changes()).isEmpty();
        assertThat(remarks(season)).anyMatch(s -> s.contains("Change one setting and fly both values on one day"));
    }

    @Test
    void noTurnsLogged() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        for (int i = 0; i < 6; i++) {
            season.fly(Outcome.exact(600 + i), null, "wing", 1 + i % 2);
        }
        ReviewAnswer answer = Effects.of(season.input());
        assertThat(answer.remarks()).anyMatch(s -> s.startsWith("No turns were logged"));
        assertThat(answer.changes().get(0).effect()).isNotNull();
        assertThat(answer.changes().get(0).moreTurns()).isNull();
    }

    @Test
    void someTurnsMissingAreFilledAndCounted() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(600, "wing", 1)
                .fly(610, "wing", 2)
                .fly(Outcome.exact(605), null, "wing", 1)
                .fly(611, "wing", 2);
        assertThat(remarks(season)).contains("1 flight without turns takes its session's mean, else the season's.");
    }

    @Test
    void settingTypedAsTextOnceAndAsNumberOnce() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(600, "wing", 2).fly(610, "wing", "2 deg").fly(600, "wing", 2).fly(610, "wing", "2 deg");
        assertThat(remarks(season))
                .anyMatch(
                        s -> s.startsWith("wing is a number on some flights and words on others (\u201c2 deg\u201d)"));
        assertThat(Effects.of(season.input()).changes()).hasSize(1);
    }

    @Test
    void settingNotRecordedOnSomeFlightsIsSaid() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(600).fly(610).fly(605).fly(640, "wing", 3).fly(645, "wing", 3);
        assertThat(remarks(season))
                .contains("wing was not recorded on 3 flights, so they tell nothing about its values.")
                .anyMatch(s -> s.startsWith("No setting was changed from one recorded value to another, so "))
                .noneMatch(s -> s.contains("at the same settings"));
    }

    /** An exact fit leaves no scatter at all; the model's is kept away from nothing. */
    @Test
    void timesThatRepeatExactlyHaveAnAnswer() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        for (int i = 0; i < 8; i++) {
            season.fly(600, "wing", 1 + i % 2);
        }
        ChangeEffect change = Effects.of(season.input()).changes().get(0);
        assertThat(change.word()).isEqualTo(Word.NO_CLEAR_DIFFERENCE);
    }

    @Test
    void anEffectBeyondTheModelIsNotCalledScatter() {
        SeasonBuilder season = new SeasonBuilder();
        for (int day = 0; day < 4; day++) {
            season.day(7 * day);
            for (int i = 0; i < 3; i++) {
                season.fly(300 + 5 * i + 3 * day, "pitch", 20).fly(600 + 9 * i - 4 * day, "pitch", 24);
            }
        }

        assertThat(Effects.of(season.input()).remarks())
                .anyMatch(r -> r.startsWith("The changes moved the times far more than this model expects"))
                .noneMatch(r -> r.startsWith("Times scatter far more"));
    }

    @Test
    void allFlightsCutShort() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.touch(600, "wing", 1).touch(610, "wing", 2).touch(620, "wing", 1);
        ReviewAnswer answer = Effects.of(season.input());
        assertThat(answer.remarks()).anyMatch(s -> s.startsWith("Every flight was cut short"));
        assertThat(answer.changes()).allMatch(c -> c.comparison() == Comparison.ONE_SIDE_UNFLOWN);
    }

    @Test
    void dayWithOneFlight() {
        SeasonBuilder season = new SeasonBuilder();
        season.day(0).fly(600, "wing", 1).fly(610, "wing", 2).fly(605, "wing", 1);
        season.day(7).fly(640, "wing", 2);
        assertThat(remarks(season)).anyMatch(s -> s.startsWith("1 of 2 days holds only one flight that counts"));
    }

    @Test
    void partialMotorsAreMarked() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(600, "wing", 1).fly(610, "wing", 2).fly(605, "wing", 1);
        season.add(ReviewFlight.of(
                        "p", "day0", SeasonBuilder.FIRST_DAY, 4, Outcome.exact(310), Map.of("wing", Level.number(2)))
                .with(new MotorUse(null, null, 500.0, null, 0.5), 1.19));
        assertThat(remarks(season)).anyMatch(s -> s.startsWith("1 flight on a part of the motor is scaled"));
        ReviewInput input = season.input();
        ReviewAnswer full =
                Effects.of(new ReviewInput(input.model(), input.flights(), input.settings(), input.steps(), true));
        assertThat(full.flightsExact()).isEqualTo(3);
        assertThat(full.remarks())
                .contains("4 flights of Teasel: 3 clean, 0 cut short and counted as \u201cat least\u201d, 0 left out,"
                        + " 1 on a part of a motor set aside.");
    }

    @Test
    void aNumberAmongWordsIsOneValueHoweverItIsWritten() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(600, "tail", "5").fly(610, "tail", "five").fly(605, "tail", "5.0");
        season.fly(615, "tail", "five");
        assertThat(Effects.of(season.input()).changes())
                .extracting(
                        change -> change.from().label() + " to " + change.to().label())
                .containsExactly("5 to five");
    }

    @Test
    void flightFlaggedTooLateCountsAndIsSaid() {
        Outcome late = new OutcomeRule(600.0, null, null, null, "bad launch", false, false).outcome();
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(late, 1000.0, "wing", 1).fly(610, "wing", 2);
        assertThat(remarks(season))
                .anyMatch(s -> s.contains("flagged after its time was known, so it counts as flown"));
    }

    /** Whatever is thrown at it: an answer with words, no exception, nothing that is not a number. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void anySmallSeasonHasAnAnswerInWords(long seed) {
        ReviewAnswer answer = Effects.of(random(new Well19937c(seed)));
        assertThat(answer.remarks()).isNotEmpty();
        for (ChangeEffect change : answer.changes()) {
            assertThat(change.sentences()).isNotEmpty().noneMatch(s -> s.contains("NaN") || s.contains("null"));
            Estimate effect = change.effect();
            if (effect != null) {
                assertThat(List.of(effect.mean(), effect.sd(), effect.low(), effect.high()))
                        .allMatch(Double::isFinite);
                assertThat(effect.sd()).isPositive();
            }
            SameDayResult sameDay = change.sameDay();
            if (sameDay != null) {
                assertThat(sameDay.effect()).isFinite();
                assertThat(sameDay.p()).isBetween(0.0, 1.0);
            }
        }
        assertThat(String.join(" ", answer.remarks())).doesNotContain("NaN").doesNotContain("null");
    }

    static ReviewInput random(Well19937c random) {
        SeasonBuilder season = new SeasonBuilder();
        int count = random.nextInt(14);
        int day = 0;
        int order = 0;
        for (int i = 0; i < count; i++) {
            if (random.nextInt(4) == 0) {
                day += random.nextInt(10);
                order = 0;
            }
            order++;
            Map<String, Level> settings = new TreeMap<>();
            if (random.nextInt(5) > 0) {
                settings.put("wing", Level.number(random.nextInt(3)));
            }
            settings.put("tail", random.nextInt(6) == 0 ? Level.word("?") : Level.number(random.nextInt(2)));
            double time = random.nextInt(9) == 0 ? 600 : 500 + 200 * random.nextDouble();
            Outcome outcome = switch (random.nextInt(6)) {
                case 0 -> Outcome.atLeast(time, "touched");
                case 1 -> Outcome.leftOut(time, "aborted");
                default -> Outcome.exact(time);
            };
            MotorUse motor = new MotorUse(
                    random.nextBoolean() ? "m" + random.nextInt(3) : null,
                    random.nextBoolean() ? random.nextInt(5) : null,
                    random.nextInt(3) > 0 ? 900 + 200 * random.nextDouble() : null,
                    null,
                    random.nextInt(6) == 0 ? 0.5 : 1);
            season.add(ReviewFlight.of(
                            "f" + i, "day" + day, SeasonBuilder.FIRST_DAY.plusDays(day), order, outcome, settings)
                    .with(motor, random.nextBoolean() ? 1.15 + 0.1 * random.nextDouble() : null)
                    .withBuild(1 + i / 8));
        }
        return season.input();
    }

    private static List<String> remarks(SeasonBuilder season) {
        return Effects.of(season.input()).remarks();
    }
}
