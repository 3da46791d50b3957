package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class SameDayTest {

    private static final Level ONE = Level.number(1);
    private static final Level TWO = Level.number(2);

    /**
     * Student (1908), Biometrika 6:20, as in R datasets::sleep, unpaired. Pooled t and its degrees of freedom computed with
     * R 4.2.2; the permutation count is exact (7524 of 184756 one-sided).
     */
    @Test
    void studentsSleepGivesThePooledTestAndTheExactPermutation() {
        DataFile sleep = DataFile.read("student_sleep.csv");
        SeasonBuilder season = new SeasonBuilder().day(0);
        for (int i = 0; i < sleep.size(); i++) {
            season.fly(Outcome.exact(StrictMath.exp(sleep.at(i, "extra"))), null, "drug", sleep.at(i, "group"));
        }
        SameDayResult result = compare(season, "drug", ONE, TWO);
        assertThat(result.effect()).isCloseTo(1.58, within(1e-12));
        double se = Objects.requireNonNull(result.se());
        assertThat(result.effect() / se).isCloseTo(1.86081346748685, within(1e-12));
        assertThat(result.degrees()).isEqualTo(18);
        double half = 1.734063606617536 * se; // t_.95 of 18 df, R 4.2.2
        assertThat(result.high()).isCloseTo(1.58 + half, within(1e-9));
        assertThat(result.everyArrangement()).isTrue();
        assertThat(result.p()).isEqualTo(15048.0 / 184756);
        assertThat(result.orderNotMixed()).isTrue();
    }

    @Test
    void flightsOfDifferentDaysAreNotCompared() {
        SeasonBuilder season = new SeasonBuilder();
        season.day(0).fly(600, "pitch", 1).fly(610, "pitch", 1);
        season.day(7).fly(700, "pitch", 2).fly(710, "pitch", 2);
        assertThat(new SameDay(season.input()).compare("pitch", ONE, TWO)).isNull();
    }

    @Test
    void flightsThatDifferInAnotherSettingAreNotCompared() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(600, "pitch", 1, "wash", 0).fly(700, "pitch", 2, "wash", 3);
        assertThat(new SameDay(season.input()).compare("pitch", ONE, TWO)).isNull();
    }

    @Test
    void cutShortFlightsAreNotUsed() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(600, "pitch", 1).touch(500, "pitch", 2).fly(630, "pitch", 2);
        SameDayResult result = compare(season, "pitch", ONE, TWO);
        assertThat(result.flightsTo()).isEqualTo(1);
        assertThat(result.effect()).isCloseTo(StrictMath.log(630.0 / 600), within(1e-12));
    }

    @Test
    void oneFlightOfEachHasADifferenceButNoInterval() {
        SeasonBuilder season = new SeasonBuilder().day(0).fly(600, "pitch", 1).fly(630, "pitch", 2);
        SameDayResult result = compare(season, "pitch", ONE, TWO);
        assertThat(result.effectPercent()).isCloseTo(5, within(1e-9));
        assertThat(result.se()).isNull();
        assertThat(result.lowPercent()).isNull();
        assertThat(result.p()).isEqualTo(1);
    }

    @Test
    void daysAreWeightedByWhatTheyTellAndTheirScatterIsPooled() {
        SeasonBuilder season = new SeasonBuilder();
        season.day(0)
                .fly(600, "pitch", 1)
                .fly(660, "pitch", 2)
                .fly(600, "pitch", 1)
                .fly(660, "pitch", 2);
        season.day(7).fly(500, "pitch", 1).fly(500, "pitch", 2);
        SameDayResult result = compare(season, "pitch", ONE, TWO);
        // weights 2*2/4 = 1 and 1*1/2: (ln 1.1 + 0)/1.5
        assertThat(result.effect()).isCloseTo(StrictMath.log(1.1) / 1.5, within(1e-12));
        assertThat(result.degrees()).isEqualTo(2);
        assertThat(result.days()).isEqualTo(2);
        assertThat(result.orderNotMixed()).isFalse();
    }

    @Test
    void moreTurnsAndDenserAirAreTakenOutAtTheirKnownRates() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        season.fly(Outcome.exact(600), 1000.0, "pitch", 1).fly(Outcome.exact(660), 1100.0, "pitch", 2);
        assertThat(compare(season, "pitch", ONE, TWO).effect()).isCloseTo(0, within(1e-12));
    }

    @Test
    void manyFlightsAreTestedByRandomArrangements() {
        SeasonBuilder season = new SeasonBuilder().day(0);
        for (int i = 0; i < 24; i++) {
            season.fly(600 + (i * 37) % 11 + (i % 2) * 30, "pitch", 1 + i % 2);
        }
        SameDayResult result = compare(season, "pitch", ONE, TWO);
        assertThat(result.everyArrangement()).isFalse();
        assertThat(result.p()).isEqualTo(1.0 / 10_001);
        assertThat(compare(season, "pitch", ONE, TWO)).isEqualTo(result);
    }

    @Test
    void partialMotorsAreComparedOnlyWithTheirLike() {
        MotorUse half = new MotorUse(null, null, 500.0, null, 0.5);
        SeasonBuilder season = new SeasonBuilder().day(0).fly(600, "pitch", 1);
        season.add(ReviewFlight.of("p", "day0", SeasonBuilder.FIRST_DAY, 2, Outcome.exact(330), Map.of("pitch", TWO))
                .with(half, 1.19));
        assertThat(new SameDay(season.input()).compare("pitch", ONE, TWO)).isNull();
    }

    private static SameDayResult compare(SeasonBuilder season, String setting, Level from, Level to) {
        return Objects.requireNonNull(new SameDay(season.input()).compare(setting, from, to));
    }
}
