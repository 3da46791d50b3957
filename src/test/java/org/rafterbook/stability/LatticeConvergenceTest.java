package org.rafterbook.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.stability.LatticeSettings.Spacing;

/** Default settings against the same code with two and four times the panels in both directions, extrapolated. */
class LatticeConvergenceTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 30);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void defaultSettingsAreConverged(long seed) {
        Airframe airframe = Arrangements.of(seed);
        GeometrySolution shown = GeometrySolution.of(airframe, LatticeSettings.DEFAULT);
        int along = shown.chordwise();
        int across = LatticeSettings.DEFAULT.spanwise();
        GeometrySolution twice =
                GeometrySolution.of(airframe, LatticeSettings.plain(2 * across, 2 * along, Spacing.COSINE));
        GeometrySolution fourTimes =
                GeometrySolution.of(airframe, LatticeSettings.plain(4 * across, 4 * along, Spacing.COSINE));
        double limit = Math.max(3e-4, 0.003 * shown.wings().meanChordM());
        double neutral = extrapolated(twice.neutralPointM(), fourTimes.neutralPointM());
        double slope = extrapolated(twice.liftSlopePerRad(), fourTimes.liftSlopePerRad());
        assertThat(shown.neutralPointM()).isCloseTo(neutral, within(limit));
        assertThat(shown.liftSlopePerRad()).isCloseTo(slope, within(0.004 * slope));
        shown.liftShare()
                .forEach((name, share) -> assertThat(share)
                        .as(name)
                        .isCloseTo(
                                extrapolated(
                                        twice.liftShare().get(name),
                                        fourTimes.liftShare().get(name)),
                                within(0.004)));
    }

    private static double extrapolated(double twice, double fourTimes) {
        return (4 * fourTimes - twice) / 3;
    }
}
