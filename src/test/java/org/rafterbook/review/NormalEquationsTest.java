package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The normal equations of the mixed model, forming and solving. */
class NormalEquationsTest {

    private static final double[] NO_PRIOR = new double[8];

    /**
     * REML of flights_demo.csv, clean flights, by lme4 1.1-31 in R 4.2.2: at its two variances the fixed part has these
     * estimates and standard errors.
     */
    @Test
    void fixedPartAtTheRemlVariancesHasTheRemlEstimates() {
        DataFile file = DataFile.read("flights_demo.csv");
        int[] clean = java.util.stream.IntStream.range(0, file.size())
                .filter(i -> file.at(i, "touched") == 0)
                .toArray();
        double[][] dense = Arrays.stream(clean)
                .mapToObj(i -> new double[] {
                    1,
                    file.at(i, "season_fraction") - 0.5,
                    Math.log(file.at(i, "turns") / 1275),
                    Math.log(file.at(i, "density") / 1.19),
                    file.at(i, "a0") == 1 ? 1 : 0,
                    file.at(i, "a0") == 2 ? 1 : 0,
                    file.at(i, "a1") == 1 ? 1 : 0,
                    file.at(i, "a2") == 1 ? 1 : 0
                })
                .toArray(double[][]::new);
        int[] session =
                Arrays.stream(clean).map(i -> (int) file.at(i, "session") - 1).toArray();
        double[] y = Arrays.stream(clean)
                .mapToDouble(i -> Math.log(file.at(i, "duration_s")))
                .toArray();
        double[] ones = new double[y.length];
        Arrays.fill(ones, 1);
        NormalEquations equations = new NormalEquations(new SparseRows(dense, 8, session, 11));
        equations.set(ones, y, square(0.051121209735857), NO_PRIOR, NO_PRIOR, 1 / square(0.010060486197871));

        double[] theta = new double[8];
        equations.solve(theta, new double[11]);
        double[] estimates = {
            -0.036916621141935,
            1.1260290118652,
            -1.3616556493138,
            -0.070102375046719,
            -0.048003443706502,
            -0.011969021377365,
            0.06157577428045
        };
        double[] errors = {
            0.03952299017277,
            0.12837078388034,
            0.63290806050943,
            0.02623183941449,
            0.033743532743064,
            0.019365177079942,
            0.03396583343504
        };
        for (int k = 0; k < estimates.length; k++) {
            assertThat(theta[k + 1]).isCloseTo(estimates[k], within(1e-6));
            double[] unit = new double[8];
            unit[k + 1] = 1;
            assertThat(Math.sqrt(equations.variance(unit))).isCloseTo(errors[k], within(1e-6));
        }
    }

    @Test
    void drawsHaveTheMeanAndCovarianceOfTheSolution() {
        double[][] dense = {{1, 0.5}, {1, -1}, {1, 2}, {1, 0}};
        double[] y = {1, 2, 0.5, 1.5};
        NormalEquations equations = new NormalEquations(new SparseRows(dense, 2, new int[] {0, 0, 1, 1}, 2));
        equations.set(new double[] {1, 2, 1, 0.5}, y, 0.3, new double[] {1, 2}, new double[] {0.5, 0}, 4);
        double[] theta = new double[2];
        double[] group = new double[2];
        equations.solve(theta, group);
        RandomStream random = new RandomStream(7);
        double[] draw = new double[2];
        double[] drawnGroup = new double[2];
        double[] sums = new double[4];
        double product = 0;
        int count = 200_000;
        for (int i = 0; i < count; i++) {
            equations.draw(random, draw, drawnGroup);
            sums[0] += draw[0] / count;
            sums[1] += draw[1] / count;
            sums[2] += drawnGroup[0] / count;
            sums[3] += drawnGroup[1] / count;
            product += square(draw[0] + 2 * draw[1] - theta[0] - 2 * theta[1]) / count;
        }
        assertThat(sums[0]).isCloseTo(theta[0], within(0.005));
        assertThat(sums[1]).isCloseTo(theta[1], within(0.005));
        assertThat(sums[2]).isCloseTo(group[0], within(0.005));
        assertThat(sums[3]).isCloseTo(group[1], within(0.005));
        assertThat(product).isCloseTo(equations.variance(new double[] {1, 2}), within(0.01));
    }

    private static double square(double x) {
        return x * x;
    }
}
