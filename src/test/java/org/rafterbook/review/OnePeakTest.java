package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Reference values: computed independently for this project with a separate numpy programme on the data sets
 * quad_demo.csv and quad_demo2.csv (simulated for this project, CC0).
 */
class OnePeakTest {

    private static final double EXACT = 1e-8;

    @Test
    void theCurveOfTheFirstReferenceSetIsReproduced() {
        OnePeakFit fit = OnePeak.fit(points("quad_demo.csv"), new double[0]);

        assertThat(placeMean(fit)).isCloseTo(0.5109365748, within(EXACT));
        assertThat(placeSd(fit)).isCloseTo(0.2576290732, within(EXACT));
        assertThat(placeProbability(fit, 0, 12)).isCloseTo(0.2154396986, within(EXACT));
        assertThat(placeProbability(fit, 33, 41)).isCloseTo(0.1477309005, within(EXACT));
        int best = best(fit);
        assertThat(fit.at(best)).isCloseTo(0.500, within(1e-12));
        assertThat(fit.curve(0) - fit.curve(best)).isCloseTo(-0.03339201, within(EXACT));
        assertThat(fit.curve(40) - fit.curve(best)).isCloseTo(-0.03177087, within(EXACT));
        int next = largestGain(fit, best);
        assertThat(fit.at(next)).isCloseTo(0.825, within(1e-12));
        assertThat(fit.gain(next, best).expected()).isCloseTo(0.00287598, within(EXACT));
    }

    @Test
    void theCurveOfTheSecondReferenceSetIsReproduced() {
        OnePeakFit fit = OnePeak.fit(points("quad_demo2.csv"), new double[0]);

        assertThat(placeMean(fit)).isCloseTo(0.7003888249, within(EXACT));
        assertThat(placeSd(fit)).isCloseTo(0.1866235853, within(EXACT));
        int best = best(fit);
        assertThat(fit.at(best)).isCloseTo(0.700, within(1e-12));
        assertThat(fit.curve(0) - fit.curve(best)).isCloseTo(-0.05715838, within(EXACT));
        int next = largestGain(fit, best);
        assertThat(fit.at(next)).isCloseTo(0.925, within(1e-12));
        assertThat(fit.gain(next, best).expected()).isCloseTo(0.00136876, within(EXACT));
    }

    @Test
    void theBandAgreesWithDrawsFromTheMixture() {
        OnePeakFit fit = OnePeak.fit(points("quad_demo.csv"), new double[] {0.61});
        NormalMixture spread = fit.spread(41);

        assertThat(spread.cumulative(spread.quantile(0.05))).isCloseTo(0.05, within(1e-6));
        assertThat(spread.cumulative(spread.quantile(0.95))).isCloseTo(0.95, within(1e-6));
        assertThat(spread.mean()).isCloseTo(fit.curve(41), within(1e-6));
    }

    @Test
    void anExtraPlaceOnTheGridGivesTheGridsValue() {
        OnePeakFit fit = OnePeak.fit(points("quad_demo.csv"), new double[] {0.25});

        assertThat(fit.curve(41)).isCloseTo(fit.curve(10), within(1e-12));
        assertThat(fit.gain(41, 10).expected()).isCloseTo(0, within(1e-8));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void flightsTakenTogetherCountAsTheyDoOneByOne(long seed) {
        Random random = new Random(seed);
        List<ResponsePoint> together = new ArrayList<>();
        List<ResponsePoint> apart = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double x = random.nextInt(5) / 4.0;
            String session = "s" + random.nextInt(3);
            double y = 6 + 0.05 * random.nextGaussian();
            boolean atLeast = random.nextInt(4) == 0;
            together.add(new ResponsePoint("", x, session, y, atLeast));
            // Far below any visible difference, yet no two flights share a place any more.
            apart.add(new ResponsePoint("", x + i * 1e-11, session, y, atLeast));
        }
        OnePeakFit a = OnePeak.fit(together, new double[0]);
        OnePeakFit b = OnePeak.fit(apart, new double[0]);

        for (int k = 0; k < OnePeak.GRID; k++) {
            assertThat(a.curve(k)).as("seed %d place %d", seed, k).isCloseTo(b.curve(k), within(1e-7));
            assertThat(a.peak()[k]).isCloseTo(b.peak()[k], within(1e-7));
        }
    }

    @Test
    void twoPeaksAreRejectedAndOneIsNot() {
        Random random = new Random(20260120);
        List<ResponsePoint> one = new ArrayList<>();
        List<ResponsePoint> two = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double x = (i % 6) / 5.0;
            double noise = 0.04 * random.nextGaussian();
            String session = "s" + i / 10;
            one.add(new ResponsePoint("", x, session, 6 - 0.3 * (x - 0.4) * (x - 0.4) + noise, false));
            two.add(new ResponsePoint("", x, session, 6 + 0.05 * Math.cos(4 * Math.PI * x) + noise, false));
        }

        assertThat(OnePeak.fit(one, new double[0]).agreement()).isGreaterThan(0.1);
        assertThat(OnePeak.fit(two, new double[0]).agreement()).isLessThan(Response.DOUBTFUL);
    }

    static List<ResponsePoint> points(String resource) {
        DataFile file = DataFile.read(resource);
        return IntStream.range(0, file.size())
                .mapToObj(i -> new ResponsePoint(
                        "",
                        file.at(i, "x"),
                        String.valueOf((int) file.at(i, "session")),
                        Math.log(file.at(i, "duration_s")),
                        false))
                .toList();
    }

    private static double placeMean(OnePeakFit fit) {
        double[] p = fit.peak();
        return IntStream.range(0, p.length)
                .mapToDouble(k -> p[k] * OnePeak.place(k))
                .sum();
    }

    private static double placeSd(OnePeakFit fit) {
        double mean = placeMean(fit);
        double[] p = fit.peak();
        return Math.sqrt(IntStream.range(0, p.length)
                .mapToDouble(k -> p[k] * (OnePeak.place(k) - mean) * (OnePeak.place(k) - mean))
                .sum());
    }

    private static double placeProbability(OnePeakFit fit, int from, int to) {
        double[] p = fit.peak();
        return IntStream.range(from, to).mapToDouble(k -> p[k]).sum();
    }

    private static int best(OnePeakFit fit) {
        return IntStream.range(0, OnePeak.GRID)
                .reduce((a, b) -> fit.curve(b) > fit.curve(a) ? b : a)
                .orElseThrow();
    }

    private static int largestGain(OnePeakFit fit, int incumbent) {
        return IntStream.range(0, OnePeak.GRID)
                .reduce((a, b) -> fit.gain(b, incumbent).expected()
                                > fit.gain(a, incumbent).expected()
                        ? b
                        : a)
                .orElseThrow();
    }
}
