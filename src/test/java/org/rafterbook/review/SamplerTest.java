package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/**
 * The sampler against values computed independently for this project on the season of flights_demo.csv: three-dimensional
 * quadrature over (sigma, s, tau) for normal errors, 395 000 draws of a separate programme for the censored model.
 */
class SamplerTest {

    private static final double NORMAL = Double.POSITIVE_INFINITY;

    @Test
    void cleanFlightsWithNormalErrorsAgreeWithQuadrature() {
        Posterior posterior = new Posterior(DemoFlights.Touched.SET_ASIDE, NORMAL);
        posterior.holds("a2", 0, 1, 0.03446, 0.03781, -0.02805, 0.09562, 0.8267);
        posterior.holds("a0", 0, 1, -0.03545, 0.02649, -0.07860, 0.00842, 0.0902);
        posterior.holds("a1", 0, 1, -0.00490, 0.05309, -0.09041, 0.08060, 0.4589);
        posterior.holds("a3", 0, 1, -0.00490, 0.05309, -0.09041, 0.08060, 0.4589);
        posterior.holds("a0", 1, 2, -0.01053, 0.02489, -0.05131, 0.03039, 0.3323);
        assertThat(Draws.mean(posterior.draws.sigma())).isCloseTo(0.051323, within(0.001));
        assertThat(Draws.mean(posterior.draws.between())).isCloseTo(0.024167, within(0.001));
        assertThat(Draws.mean(posterior.draws.tau())).isCloseTo(0.070306, within(0.001));
    }

    @Test
    void allFlightsTakenAsExactAgreeWithQuadrature() {
        Posterior posterior = new Posterior(DemoFlights.Touched.AS_EXACT, NORMAL);
        posterior.holds("a2", 0, 1, 0.02647);
        posterior.holds("a0", 0, 1, -0.03357);
        posterior.holds("a1", 0, 1, -0.00364);
        posterior.holds("a0", 1, 2, -0.00446);
    }

    @Test
    void censoredFlightsWithStudentErrorsAgreeWithALongChain() {
        Posterior posterior = new Posterior(DemoFlights.Touched.AT_LEAST, 6);
        posterior.holds("a2", 0, 1, 0.0311, 0.0398, -0.0342, 0.0959, 0.790);
        posterior.holds("a0", 0, 1, -0.0357, 0.0272, -0.0804, 0.0091, 0.094);
        posterior.holds("a0", 1, 2, -0.0152, 0.0302, -0.0644, 0.0346, 0.302);
        posterior.holds("a1", 0, 1, -0.0048);
        posterior.holds("a3", 0, 1, -0.0048);
    }

    @Test
    void sameInputGivesTheSameDigits() {
        Draws once = new Posterior(DemoFlights.Touched.AT_LEAST, 6).draws;
        Draws again = new Posterior(DemoFlights.Touched.AT_LEAST, 6).draws;
        assertThat(again.contrasts()[0]).isEqualTo(once.contrasts()[0]);
        assertThat(again.sigma()).isEqualTo(once.sigma());
    }

    @Test
    void samplingStopsWhenTheResultIsNoLongerWanted() {
        CensoredModel model = new Design(DemoFlights.read(DemoFlights.Touched.AT_LEAST)).model();
        assertThatThrownBy(() -> Sampler.run(model, List.of(), share -> share < 0.5))
                .isInstanceOf(CancellationException.class);
    }

    /** A posterior of the demo season with the contrasts that are checked. */
    private static final class Posterior {

        private final Design design;
        private final Draws draws;
        private final List<double[]> contrasts;

        Posterior(DemoFlights.Touched touched, double errorDegrees) {
            design = new Design(DemoFlights.read(touched));
            contrasts = List.of(
                    contrast("a0", 0, 1),
                    contrast("a0", 1, 2),
                    contrast("a1", 0, 1),
                    contrast("a2", 0, 1),
                    contrast("a3", 0, 1));
            draws = Sampler.run(design.model(errorDegrees), contrasts, Progress.NONE);
        }

        private double[] contrast(String setting, int from, int to) {
            return Objects.requireNonNull(design.contrast(setting, Level.number(from), Level.number(to)));
        }

        Estimate estimate(String setting, int from, int to) {
            double[] wanted = contrast(setting, from, to);
            for (int k = 0; k < contrasts.size(); k++) {
                if (java.util.Arrays.equals(contrasts.get(k), wanted)) {
                    return draws.estimate(k);
                }
            }
            throw new AssertionError(setting);
        }

        void holds(String setting, int from, int to, double mean) {
            assertThat(estimate(setting, from, to).mean()).as(setting).isCloseTo(mean, within(0.001));
        }

        void holds(String setting, int from, int to, double mean, double sd, double low, double high, double p) {
            holds(setting, from, to, mean);
            Estimate estimate = estimate(setting, from, to);
            assertThat(estimate.sd()).as(setting).isCloseTo(sd, within(0.002));
            assertThat(estimate.low()).as(setting).isCloseTo(low, within(0.003));
            assertThat(estimate.high()).as(setting).isCloseTo(high, within(0.003));
            assertThat(estimate.probabilityRaised()).as(setting).isCloseTo(p, within(0.01));
        }
    }
}
