package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Reference values: computed independently for this project (R 4.2.2, least squares with session dummies). */
class ParabolaTest {

    @Test
    void theVertexOfAFlatSeasonIsFarOutsideAndUnbounded() {
        Parabola parabola =
                Parabola.fit(OnePeakTest.points("quad_demo.csv"), 0.5).orElseThrow();

        assertThat(parabola.linear()).isCloseTo(0.038368935818, within(1e-11));
        assertThat(parabola.quadratic()).isCloseTo(-0.021628922309, within(1e-11));
        assertThat(parabola.sigma()).isCloseTo(0.026716759200, within(1e-11));
        assertThat(parabola.vertex()).isCloseTo(1.3869821453, within(1e-8));
        assertThat(deltaError(parabola)).isCloseTo(16.7426, within(5e-5));
        assertThat(parabola.vertexSpan(0.90)).isEmpty();
    }

    @Test
    void theVertexOfACurvedSeasonIsBounded() {
        Parabola parabola =
                Parabola.fit(OnePeakTest.points("quad_demo2.csv"), 0.5).orElseThrow();

        assertThat(parabola.linear()).isCloseTo(0.065077585603, within(1e-11));
        assertThat(parabola.quadratic()).isCloseTo(-0.182665783174, within(1e-11));
        assertThat(parabola.sigma()).isCloseTo(0.007181954854, within(1e-11));
        assertThat(parabola.vertex()).isCloseTo(0.6781329389, within(1e-9));
        assertThat(deltaError(parabola)).isCloseTo(0.0347273912, within(1e-9));
        Span span = parabola.vertexSpan(0.90).orElseThrow();
        assertThat(span.low()).isCloseTo(0.62671275, within(1e-7));
        assertThat(span.high()).isCloseTo(0.76241272, within(1e-7));
    }

    @Test
    void twoValuesCarryNoParabola() {
        List<ResponsePoint> points = OnePeakTest.points("quad_demo.csv").stream()
                .map(p -> new ResponsePoint("", p.value() < 0.5 ? 0.3 : 0.5, p.session(), p.logDuration(), false))
                .toList();

        assertThat(Parabola.fit(points, 0.5)).isEmpty();
    }

    /** Standard error of the vertex by the delta method. */
    private static double deltaError(Parabola p) {
        double byLinear = -1 / (2 * p.quadratic());
        double byQuadratic = p.linear() / (2 * p.quadratic() * p.quadratic());
        return Math.sqrt(byLinear * byLinear * p.varianceLinear()
                + byQuadratic * byQuadratic * p.varianceQuadratic()
                + 2 * byLinear * byQuadratic * p.covariance());
    }
}
