package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Simulated seasons with known true effects: how often the review tells the truth. */
class SimulatedSeasonsTest {

    private static final long FIRST_SEED = 20_000;
    private static final int MANY = Integer.getInteger("seasons", 300);

    /** Twenty seasons are few: the limits are wide enough for chance, narrow enough for a broken method. */
    @Test
    void twentyBaseSeasonsAreToldTruly() {
        SeasonTally tally = run(Scenario.BASE, 20);
        assertThat(tally.coverage()).isBetween(83.0, 98.5);
        assertThat(tally.rmse()).isLessThan(3.9);
        assertThat(tally.nothingRaised()).isLessThanOrEqualTo(6);
        assertThat(tally.comparedShare()).isGreaterThan(66);
        assertThat(tally.power()).isGreaterThan(5);
    }

    static Stream<Arguments> scenarios() {
        return Stream.of(
                Arguments.of(Scenario.BASE, 88.0, 97.0),
                Arguments.of(Scenario.NULL, 88.0, 98.0),
                Arguments.of(Scenario.BETWEEN, 88.0, 97.0),
                Arguments.of(Scenario.TOUCH25, 88.0, 97.0),
                Arguments.of(Scenario.BIG, 82.0, 92.0),
                Arguments.of(Scenario.MISSPEC, 85.0, 95.0));
    }

    @Tag("endurance")
    @ParameterizedTest
    @MethodSource("scenarios")
    void manySeasonsAreToldTruly(Scenario scenario, double least, double most) {
        SeasonTally tally = run(scenario, MANY);
        assertThat(tally.coverage()).isBetween(least, most);
        assertThat(tally.nothingRaised()).isLessThanOrEqualTo(2);
        assertThat(tally.comparedShare()).isGreaterThan(66);
        assertThat(tally.jointCoverage()).isBetween(85.0, 95.0);
        if (scenario == Scenario.BASE) {
            assertThat(tally.power()).isGreaterThanOrEqualTo(14);
            assertThat(tally.rmse()).isLessThanOrEqualTo(3.3);
        }
    }

    private static SeasonTally run(Scenario scenario, int seasons) {
        double threshold = SimulatedSeason.threshold(scenario);
        SeasonTally tally = new SeasonTally();
        LongStream.range(FIRST_SEED, FIRST_SEED + seasons)
                .parallel()
                .mapToObj(seed -> SimulatedSeason.of(scenario, seed, threshold))
                .toList()
                .forEach(tally::add);
        System.out.println("simulated seasons '" + scenario + "', seeds " + FIRST_SEED + " to "
                + (FIRST_SEED + seasons - 1) + ": " + tally);
        return tally;
    }
}
