package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleSupplier;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RandomStreamTest {

    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final int COUNT = 200_000;

    @Test
    void normalsHaveMeanNoughtAndVarianceOne() {
        RandomStream random = new RandomStream(1);
        assertThat(mean(random::normal)).isCloseTo(0, within(0.01));
        assertThat(mean(() -> square(random.normal()))).isCloseTo(1, within(0.02));
    }

    @ParameterizedTest
    @CsvSource({"1", "3.5", "51.5"})
    void gammasHaveTheirShapeAsMeanAndVariance(double shape) {
        RandomStream random = new RandomStream(2);
        assertThat(mean(() -> random.gamma(shape))).isCloseTo(shape, within(0.02 * shape));
        assertThat(mean(() -> square(random.gamma(shape) - shape))).isCloseTo(shape, within(0.05 * shape));
    }

    /** Inverse Mills ratios phi / (1 - Phi), from 40-digit arithmetic. */
    @ParameterizedTest
    @CsvSource({"-2, 0.0552478626789899", "0, 0.797884560802865", "2, 2.37321553282284", "8, 8.12136811223612"})
    void normalsAboveAnEndHaveTheMillsRatioAsMean(double low, double expected) {
        RandomStream random = new RandomStream(3);
        assertThat(mean(() -> random.normalBetween(low, INFINITE))).isCloseTo(expected, within(0.01));
        assertThat(mean(() -> random.normalBetween(-INFINITE, -low))).isCloseTo(-expected, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({"-1, 0.5", "-0.01, 0.01", "1, 1.2", "2, 6", "-6, -2", "5, 5.05", "0, 3"})
    void normalsBetweenTwoEndsHaveTheirMean(double low, double high) {
        NormalDistribution normal = new NormalDistribution();
        double expected = (normal.density(low) - normal.density(high)) / normal.probability(low, high);
        RandomStream random = new RandomStream(4);
        assertThat(mean(() -> {
                    double z = random.normalBetween(low, high);
                    return z >= low && z <= high ? z : Double.NaN;
                }))
                .isCloseTo(expected, within(0.01));
    }

    private static double mean(DoubleSupplier draw) {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += draw.getAsDouble();
        }
        return sum / COUNT;
    }

    private static double square(double x) {
        return x * x;
    }

    @Test
    void theLogarithmIsThatOfTheStandardLibraryToTheLastPlaces() {
        RandomStream random = new RandomStream(5);
        for (int i = 0; i < 100_000; i++) {
            double x = i % 2 == 0 ? random.uniform() : Math.pow(10, 40 * random.uniform() - 20);
            double exact = StrictMath.log(x);
            assertThat(RandomStream.ln(x)).isCloseTo(exact, within(4e-16 * Math.max(Math.abs(exact), 0.3)));
        }
        assertThat(RandomStream.ln(1)).isZero();
    }
}
