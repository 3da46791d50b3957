package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.special.Erf;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The likelihood of responses known only within ends, against Tobin (1958), Econometrica 26:24, as in survival::tobin,
 * fitted with survival 3.5-3 in R 4.2.2; then the sampler against that likelihood.
 */
class CensoredTest {

    private static final double[] FIT = {15.144866332221, -0.12905928386455, -0.045541662889678};
    private static final double SCALE = 5.5725397659952;
    private static final double LOG_LIKELIHOOD = -28.940133199721;

    private final DataFile file = DataFile.read("tobin.csv");
    private final double[] durable = file.column("durable");

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void publishedFitHasThePublishedLogLikelihoodAndIsItsTop(boolean mirrored) {
        double[] fit = Arrays.stream(FIT).map(c -> mirrored ? -c : c).toArray();
        double top = logLikelihood(fit, SCALE, mirrored);
        assertThat(top).isCloseTo(LOG_LIKELIHOOD, within(1e-10));
        for (int k = 0; k < 3; k++) {
            for (double side : new double[] {-1e-3, 1e-3}) {
                double[] beside = fit.clone();
                beside[k] *= 1 + side;
                assertThat(logLikelihood(beside, SCALE, mirrored)).isLessThan(top);
            }
        }
        assertThat(logLikelihood(fit, SCALE * 1.001, mirrored)).isLessThan(top);
        assertThat(logLikelihood(fit, SCALE / 1.001, mirrored)).isLessThan(top);
    }

    /** One mean and one scale, so that a fine grid over the checked likelihood gives the posterior. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void samplerAgreesWithAGridOverTheLikelihood(boolean mirrored) {
        double side = mirrored ? -1 : 1;
        double sum = 0;
        double meanOfMean = 0;
        double meanOfScale = 0;
        for (double m = -14; m <= 8; m += 0.2) {
            for (double s = 0.5; s <= 20; s += 0.2) {
                double[] coefficients = {side * m, 0, 0};
                double prior = -m * m / (2 * 100) - 2 * Math.log(1 + s * s / (3 * 25));
                double weight = Math.exp(logLikelihood(coefficients, s, mirrored) + prior + 40);
                sum += weight;
                meanOfMean += weight * side * m;
                meanOfScale += weight * s;
            }
        }
        Draws draws = Sampler.run(meanModel(mirrored), List.of(new double[] {1}), 1000, 60_000, Progress.NONE);
        assertThat(draws.estimate(0).mean()).isCloseTo(meanOfMean / sum, within(0.06));
        assertThat(Draws.mean(draws.sigma())).isCloseTo(meanOfScale / sum, within(0.06));
    }

    /** Responses known within a tenth are nearly as good as exact ones. */
    @Test
    void narrowIntervalsGiveWhatExactResponsesGive() {
        double[] y = {1.0, 1.4, 0.7, 1.1, 0.9, 1.3};
        Draws exact = Sampler.run(plain(y, y), List.of(new double[] {1}), Progress.NONE);
        double[] low = Arrays.stream(y).map(v -> v - 0.05).toArray();
        double[] high = Arrays.stream(y).map(v -> v + 0.05).toArray();
        Draws within = Sampler.run(plain(low, high), List.of(new double[] {1}), Progress.NONE);
        assertThat(within.estimate(0).mean()).isCloseTo(exact.estimate(0).mean(), within(0.005));
        assertThat(within.responseMeans()[1]).isBetween(1.35, 1.45);
    }

    private CensoredModel meanModel(boolean mirrored) {
        double[] low = new double[durable.length];
        double[] high = new double[durable.length];
        for (int i = 0; i < durable.length; i++) {
            low[i] = mirrored ? -durable[i] : durable[i] == 0 ? Double.NEGATIVE_INFINITY : durable[i];
            high[i] = !mirrored ? durable[i] : durable[i] == 0 ? Double.POSITIVE_INFINITY : -durable[i];
        }
        return model(low, high, 10, 5);
    }

    private static CensoredModel plain(double[] low, double[] high) {
        return model(low, high, 1, 0.3);
    }

    private static CensoredModel model(double[] low, double[] high, double priorSd, double scale) {
        double[][] ones = Arrays.stream(low).mapToObj(v -> new double[] {1}).toArray(double[][]::new);
        return new CensoredModel(
                new SparseRows(ones, 1, new int[low.length], 1),
                low,
                high,
                new double[] {0},
                new double[] {priorSd},
                new boolean[] {false},
                ScalePrior.halfT(3, scale),
                ScalePrior.fixed(1e-9),
                LevelPrior.fixed(1),
                Double.POSITIVE_INFINITY);
    }

    /** Censored at 0 from the left; mirrored: everything times -1 and censored from the right. */
    private double logLikelihood(double[] coefficients, double scale, boolean mirrored) {
        double sum = 0;
        for (int i = 0; i < durable.length; i++) {
            double fit = coefficients[0] + coefficients[1] * file.at(i, "age") + coefficients[2] * file.at(i, "quant");
            double y = mirrored ? -durable[i] : durable[i];
            double z = (y - fit) / scale;
            sum += durable[i] > 0
                    ? new NormalDistribution(fit, scale).logDensity(y)
                    : FastMath.log(0.5 * Erf.erfc((mirrored ? z : -z) / FastMath.sqrt(2)));
        }
        return sum;
    }
}
