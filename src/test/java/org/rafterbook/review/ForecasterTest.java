package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ForecasterTest {

    private static final Level OLD = Level.number(0);
    private static final Level NEW = Level.number(1);

    private static ReviewInput season;
    private static Design design;
    private static Draws draws;
    private static Estimate estimate;
    private static Forecaster forecaster;

    @BeforeAll
    static void sample() {
        season = DemoFlights.read(DemoFlights.Touched.AT_LEAST);
        design = new Design(season);
        double[] contrast = Objects.requireNonNull(design.contrast("a2", OLD, NEW));
        draws = Sampler.run(design.model(), List.of(contrast), 500, 6000, Progress.NONE);
        estimate = draws.estimate(0);
        forecaster = new Forecaster(new SeasonFit(design, design.model(), draws));
    }

    @Test
    void theSpreadBeforeIsThatOfTheWholeMatrixInverted() {
        // s0^2 = c' A^-1 c with A formed densely, sessions as columns; the forecast is sd x s1 / s0.
        double s0 = dense(0);
        double s1 = dense(3);

        assertThat(forecaster.of("a2", OLD, NEW, 3, estimate).sd()).isCloseTo(estimate.sd() * s1 / s0, within(1e-9));
    }

    @Test
    void moreFlightsNarrowTheInterval() {
        double last = estimate.sd();
        for (int perSide : new int[] {1, 2, 3, 6, 12, 24}) {
            Forecast forecast = forecaster.of("a2", OLD, NEW, perSide, estimate);
            assertThat(forecast.sd()).isLessThan(last);
            assertThat(forecast.chanceClear()).isBetween(0.0, 1.0);
            last = forecast.sd();
        }
        assertThat(forecaster.smallestFor("a2", OLD, NEW, 0.04, estimate).halfWidth())
                .isLessThanOrEqualTo(0.04);
    }

    /** The forecast kept by flying it: trials drawn from the model's own estimate, then sampled again. */
    @Test
    void theForecastWidthIsWhatTheFlightsThenShow() {
        Forecast forecast = forecaster.of("a2", OLD, NEW, 6, estimate);
        Random random = new Random(606);
        double widths = 0;
        int trials = 5;
        for (int k = 0; k < trials; k++) {
            double effect = estimate.mean() + estimate.sd() * random.nextGaussian();
            Design flown = new Design(after(random, effect));
            double[] contrast = Objects.requireNonNull(flown.contrast("a2", OLD, NEW));
            widths += Sampler.run(flown.model(), List.of(contrast), 300, 3000, Progress.NONE)
                            .estimate(0)
                            .sd()
                    / trials;
        }

        assertThat(forecast.sd() / widths).as("seed 606").isBetween(0.85, 1.15);
    }

    @Test
    void aValueNeverFlownCanBeForecast() {
        Forecast forecast = forecaster.of("a2", NEW, Level.number(7), 3, null);

        assertThat(forecast.sd()).isBetween(0.01, 0.07);
        assertThat(forecast.chanceRaised()).isCloseTo(forecast.chanceLowered(), within(0.2));
        assertThat(forecast.sentence()).startsWith("3 + 3 flights on one day would bring the interval to about ± ");
    }

    @Test
    void aLargeEffectWillBeClearAndNoneWillNot() {
        assertThat(Forecast.of(6, 0.15, 0.04, 0.02).chanceRaised()).isGreaterThan(0.99);
        assertThat(Forecast.of(6, -0.15, 0.04, 0.02).chanceLowered()).isGreaterThan(0.99);
        assertThat(Forecast.of(6, 0, 0.04, 0.03).chanceClear()).isBetween(0.02, 0.1);
    }

    private static double dense(int perSide) {
        int d = design.columns().size();
        int sessions = design.sessions().size() + 1;
        RealMatrix a = MatrixUtils.createRealMatrix(d + sessions, d + sessions);
        double sigma2 = 9.0 / 7 * square(draws.sigma());
        double s2 = square(draws.between());
        double[] precision = new double[d];
        design.model().precision(square(draws.tau()), precision);
        for (int j = 0; j < d + sessions; j++) {
            a.setEntry(j, j, j < d ? precision[j] : 1 / s2);
        }
        int from = column("0");
        int to = column("1");
        int last = design.flights().size() - 1;
        for (int i = 0; i <= last + 2 * perSide; i++) {
            double[] row = new double[d + sessions];
            double weight = 1;
            for (int j = 0; j < d; j++) {
                DesignColumn column = design.columns().get(j);
                boolean own = !(column.kind() == DesignColumn.Kind.LEVEL
                                && column.of().equals("a2"))
                        && column.kind() != DesignColumn.Kind.TURNS
                        && column.kind() != DesignColumn.Kind.DENSITY
                        && column.kind() != DesignColumn.Kind.ORDER;
                row[j] = i <= last ? design.at(i, j) : own ? design.at(last, j) : 0;
            }
            if (i <= last) {
                row[d + design.sessions().indexOf(design.flights().get(i).sessionId())] = 1;
                weight = design.flights().get(i).isExact() ? 1 : 0.35;
            } else {
                row[(i - last) % 2 == 1 ? from : to] = 1;
                row[d + sessions - 1] = 1;
            }
            RealMatrix outer = MatrixUtils.createRowRealMatrix(row);
            a = a.add(outer.transposeMultiply(outer).scalarMultiply(weight / sigma2));
        }
        double[] c = new double[d + sessions];
        c[from] = -1;
        c[to] = 1;
        var v = MatrixUtils.createRealVector(c);
        return Math.sqrt(v.dotProduct(MatrixUtils.inverse(a).operate(v)));
    }

    private static int column(String level) {
        for (int j = 0; j < design.columns().size(); j++) {
            DesignColumn c = design.columns().get(j);
            if (c.of().equals("a2") && c.level().equals(level)) {
                return j;
            }
        }
        throw new AssertionError(level);
    }

    private static double square(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v * v / values.length;
        }
        return sum;
    }

    private static ReviewInput after(Random random, double effect) {
        List<ReviewFlight> flights = new ArrayList<>(season.flights());
        ReviewFlight last = flights.get(flights.size() - 1);
        double day = Draws.mean(draws.between()) * random.nextGaussian();
        for (int i = 0; i < 12; i++) {
            Map<String, Level> settings = new TreeMap<>(last.settings());
            settings.put("a2", i % 2 == 0 ? OLD : NEW);
            double y = Math.log(last.durationS())
                    + day
                    + (i % 2 == 0 ? 0 : effect)
                    + Draws.mean(draws.sigma()) * random.nextGaussian();
            flights.add(ReviewFlight.of(
                            "t" + i,
                            "trial",
                            last.sessionDate().plusDays(1),
                            i + 1,
                            Outcome.exact(Math.exp(y)),
                            settings)
                    .with(last.motor(), last.densityKgM3()));
        }
        return ReviewInput.of("demo", flights, season.settings());
    }
}
