package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reference values: computed independently for this project (noncentral t, separate programmes) unless said otherwise. */
class FlightsNeededTest {

    /** Gain %, then flights for each setting at scatter 3, 4, 5, 6, 8 %: chance 80 %, chance 90 %. */
    @ParameterizedTest
    @CsvSource({
        "2, 30, 40, 52, 71, 80, 110, 114, 158, 202, 280",
        "3, 14, 19, 24, 33, 37, 50, 52, 72, 91, 126",
        "4, 9, 11, 14, 19, 21, 29, 30, 41, 52, 72",
        "5, 6, 8, 10, 13, 14, 19, 20, 27, 34, 47",
        "6, 5, 6, 7, 9, 10, 14, 14, 19, 24, 33",
        "8, 3, 4, 5, 6, 7, 8, 9, 12, 15, 20",
        "10, 3, 3, 4, 4, 5, 6, 6, 8, 10, 13"
    })
    void theTableOfFlightsIsReproduced(
            int gain, int a, int a9, int b, int b9, int c, int c9, int d, int d9, int e, int e9) {
        int[] scatters = {3, 4, 5, 6, 8};
        int[] at80 = {a, b, c, d, e};
        int[] at90 = {a9, b9, c9, d9, e9};
        for (int i = 0; i < scatters.length; i++) {
            double g = gain / 100.0;
            double cv = scatters[i] / 100.0;
            assertThat(FlightsNeeded.perSetting(g, cv, 0.80))
                    .as("scatter %d", scatters[i])
                    .hasValue(at80[i]);
            assertThat(FlightsNeeded.perSetting(g, cv, 0.90))
                    .as("scatter %d", scatters[i])
                    .hasValue(at90[i]);
        }
    }

    @Test
    void theChanceIsExactToElevenDigits() {
        assertThat(FlightsNeeded.power(12, 0.05, 0.05)).isCloseTo(0.749298389949, within(1e-11));
        assertThat(FlightsNeeded.power(6, 0.08, 0.05)).isCloseTo(0.798465182210, within(1e-11));
    }

    /** Chances simulated with 40 000 pairs of samples each, so good to about 0.006. */
    @ParameterizedTest
    @CsvSource({"4,5,21,.806", "5,5,14,.809", "8,5,7,.860", "3,3,14,.815", "5,8,34,.800"})
    void theChanceAgreesWithSimulation(double gain, double scatter, int each, double simulated) {
        assertThat(FlightsNeeded.power(each, gain / 100, scatter / 100)).isCloseTo(simulated, within(0.006));
    }

    @ParameterizedTest
    @CsvSource({"3,8.7", "5,5.9", "8,4.4", "12,3.5", "20,2.7"})
    void theHalfWidthsAtFivePercentScatterAreReproduced(int each, double points) {
        assertThat(100 * FlightsNeeded.halfWidth(each, 0.05)).isCloseTo(points, within(0.05));
    }

    /** The published rule of thumb 16 cv^2 / ln(ratio)^2 is two-sided, so it lies somewhat above (van Belle, Statistical
     * Rules of Thumb, eq. 2.9, read second-hand). */
    @Test
    void thePublishedRuleOfThumbIsTheRightSize() {
        double rule = 16 * 0.05 * 0.05 / Math.pow(Math.log(1.05), 2);
        int ours = FlightsNeeded.perSetting(0.05, 0.05, 0.80).orElseThrow();

        assertThat(rule / ours).isBetween(1.0, 1.4);
    }

    @Test
    void tQuantilesAreTheTabledOnes() {
        assertThat(new TDistribution(5).inverseCumulativeProbability(.95)).isCloseTo(2.0150483733330, within(1e-9));
        assertThat(new TDistribution(10).inverseCumulativeProbability(.95)).isCloseTo(1.8124611228117, within(1e-9));
        assertThat(new TDistribution(30).inverseCumulativeProbability(.95)).isCloseTo(1.6972608865940, within(1e-9));
    }

    /** Ranges over 3 to 12 flights a day at scatter 5 %, day scatter 3.5 %. */
    @ParameterizedTest
    @CsvSource({"2,16,20", "3,10,12", "4,8,10", "6,6,7.4", "8,5,6.2"})
    void acrossDaysOnlyLargeGainsShow(int days, double low, double high) {
        for (int flights : new int[] {3, 6, 12}) {
            assertThat(100 * FlightsNeeded.smallestAcrossDays(days, flights, 0.05, 0.035))
                    .isBetween(low - 0.3, high + 0.1);
        }
    }

    @Test
    void theNoncentralTAgreesWithDraws() {
        Random random = new Random(4711);
        int above = 0;
        for (int i = 0; i < 200_000; i++) {
            double chi = 0;
            for (int k = 0; k < 3; k++) {
                double z = random.nextGaussian();
                chi += z * z;
            }
            above += (random.nextGaussian() + 1.4) / Math.sqrt(chi / 3) > 2 ? 1 : 0;
        }

        assertThat(NoncentralT.above(2, 3, 1.4)).as("seed 4711").isCloseTo(above / 200_000.0, within(0.005));
        assertThat(NoncentralT.above(2, 3, 0))
                .isCloseTo(1 - new TDistribution(3).cumulativeProbability(2), within(1e-11));
    }

    @Test
    void whatCannotBeShownIsSaid() {
        assertThat(FlightsNeeded.perSetting(0.0005, 0.05, 0.80)).isEmpty();
        assertThat(FlightsNeeded.perSetting(0, 0.05, 0.80)).isEmpty();
        assertThat(FlightsNeeded.sentence(0.05, 0.05))
                .isEqualTo("To show a gain of 5 % with times that scatter by 5 %, fly about 14 + 14 alternately on one"
                        + " day (8 chances in 10).");
        assertThat(FlightsNeeded.sentence(0.04, 0.0612)).isEqualTo(FlightsNeeded.sentence(0.04, 0.0588));
        assertThat(FlightsNeeded.sentence(0.04, 0.0612)).contains("scatter by 6 %, fly about 30 + 30");
        assertThat(FlightsNeeded.sentence(0.04, 0.0352)).contains("scatter by 3.5 %, fly about 11 + 11");
        assertThat(FlightsNeeded.sentence(0.2, 0.3453)).contains("scatter by 35 %, ");
        assertThat(FlightsNeeded.alternateSentence(0.05, 0.035))
                .isEqualTo(
                        "Alternate the two settings on the same day: with three days for each, only a gain of 11 % or"
                                + " more would show, however many flights a day. One day each tells nothing.");
    }
}
