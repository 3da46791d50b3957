package org.rafterbook.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.rafterbook.airframe.Surface;

/** Default settings against finer runs of the same code. */
class LatticeConvergenceTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 30);
    }

    private static Map<Long, Converged.Error> errors = Map.of();

    /** On as many cores as there are: each of the finer runs takes a second. */
    @BeforeAll
    static void finerRuns() {
        errors = seeds().parallel()
                .boxed()
                .collect(Collectors.toConcurrentMap(
                        seed -> seed, seed -> Converged.byExtrapolation(Arrangements.of(seed))));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void defaultSettingsAreConverged(long seed) {
        Converged.Error error = errors.get(seed);
        assertThat(error.worst()).as(error.toString()).isLessThan(1);
    }

    /**
     * The worst of each kind that a hunt ({@link LatticeHunt}) found. Neutral point in mm, lift slope and the first surface's
     * share computed by us: 30 panels across and twice the default counts along the chord, extrapolated; of seed 94, whose edges step,
     * the mean of 16 and 20 along the chord.
     */
    @ParameterizedTest(name = "{4}, seed {0}")
    @CsvSource({
        "1, 43.86, 5.6987, 0.7997, forward sweep",
        "2, 73.41, 3.0474, 0.6356, gap of 0.05 to 0.3 chords",
        "5, 112.57, 1.6302, 0.9419, aspect ratio 0.7 to 1.5",
        "6, 67.86, 9.1435, 0.6332, aspect ratio 12 to 25",
        "12, 120.79, 4.8259, 0.2451, tail ahead",
        "13, 139.01, 7.1297, 0.5185, tail wider than the wing",
        "14, 39.32, 4.4778, 0.3471, wing in touching pieces",
        "16, 92.91, 4.2488, 0.8840, kinked leading edge",
        "19, 47.45, 4.5904, 0.8680, tail in the wake or a few mm off it",
        "20, 94.61, 4.1578, 0.8353, tail close behind the wing",
        "22, 14.67, 6.6556, 0.7794, aspect ratio 12 to 25",
        "23, 70.48, 4.1405, 0.8629, pointed and elliptic",
        "24, 68.28, 4.7921, 0.8799, tiny centre panel",
        "28, 99.96, 4.9872, 0.2419, tail ahead",
        "32, 6.92, 4.7756, 0.8724, kinked leading edge",
        "78, 53.23, 3.8167, 0.6389, wing in touching pieces",
        "94, 82.09, 5.3707, 0.4929, wing in touching pieces"
    })
    void arrangementsThatLatticesFindHardAreConverged(
            long seed, double neutralMm, double slope, double share, String kind) {
        assertThat(HostileArrangements.kind(seed)).isEqualTo(kind);
        GeometrySolution shown =
                Models.solve(HostileArrangements.of(seed).surfaces().toArray(Surface[]::new));
        double limitMm = Math.max(0.3, 3 * shown.wings().meanChordM());
        assertThat(1000 * shown.neutralPointM()).isCloseTo(neutralMm, within(limitMm));
        assertThat(shown.liftSlopePerRad()).isCloseTo(slope, within(0.004 * slope));
        assertThat(shown.liftShare().values().iterator().next()).isCloseTo(share, within(0.004));
    }
}
