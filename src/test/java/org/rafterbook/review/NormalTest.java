package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

class NormalTest {

    /** Against the error function of a general-purpose library, along the whole axis. */
    @Test
    void theDistributionFunctionAgreesWithTheErrorFunction() {
        for (double z = -9; z <= 9; z += 0.0173) {
            double expected = 0.5 * Erf.erfc(-z / Math.sqrt(2));
            assertThat(Normal.cumulative(z)).as("z %s", z).isCloseTo(expected, within(2e-15));
            if (z < 0) {
                assertThat(Normal.cumulative(z) / expected).as("z %s", z).isCloseTo(1, within(1e-7));
            }
        }
    }

    /** Mills ratio's inverse phi/(1-Phi): computed independently for this project in 40-digit arithmetic. */
    @Test
    void theHazardIsThePublishedOne() {
        assertThat(hazard(-2)).isCloseTo(0.0552478626789899, within(1e-14));
        assertThat(hazard(0)).isCloseTo(0.797884560802865, within(1e-14));
        assertThat(hazard(2)).isCloseTo(2.37321553282284, within(1e-12));
        assertThat(hazard(8)).isCloseTo(8.12136811223612, within(1e-6));
    }

    private static double hazard(double z) {
        return Normal.density(z) / Normal.cumulative(-z);
    }
}
