package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;

/**
 * Reference values: a separate sampler written for this project, on torque_demo.csv (simulated for this project, CC0); its
 * torques are taken as N mm.
 */
class CeilingTest {

    private static final Progress NONE = Progress.NONE;

    private static CeilingModel model;
    private static Ceiling ceiling;

    @BeforeAll
    static void fit() {
        DataFile file = DataFile.read("torque_demo.csv");
        List<ReviewFlight> flights = IntStream.range(0, file.size())
                .mapToObj(i -> {
                    double height = file.at(i, "height_m");
                    boolean touched = file.at(i, "touched") == 1;
                    return flight(
                            i,
                            "s" + (int) file.at(i, "session"),
                            file.at(i, "torque") / 1000,
                            touched ? new Peak(null, null, height) : new Peak(height, height, null),
                            Map.of());
                })
                .toList();
        model = known(CeilingModel.of(flights, Map.of(), NONE));
        ceiling = Ceiling.of(model, 21.0);
    }

    private static CeilingModel known(Answer<CeilingModel> answer) {
        assertThat(answer).isInstanceOf(Answer.Known.class);
        return ((Answer.Known<CeilingModel>) answer).value();
    }

    private static ReviewFlight flight(
            int i, String session, @Nullable Double torque, Peak peak, Map<String, Level> settings) {
        return new ReviewFlight(
                "f" + i,
                "",
                session,
                LocalDate.of(2026, 1, 6),
                i,
                500,
                Outcome.exact(500),
                new MotorUse(null, null, null, torque, 1),
                null,
                false,
                1,
                settings,
                null,
                peak,
                Handling.UNKNOWN,
                "");
    }

    @ParameterizedTest
    @CsvSource({"33,.0061", "35,.0377", "37,.1709", "39,.4678", "41,.7707"})
    void theChanceToTouchIsTheReferences(double torque, double chance) {
        assertThat(model.chance(torque / 1000, 21.0)).isCloseTo(chance, within(0.003));
        assertThat(Objects.requireNonNull(ceiling.chance(torque / 1000))).isCloseTo(chance, within(0.003));
    }

    @ParameterizedTest
    @CsvSource({".05,35.32", ".10,36.21", ".20,37.24"})
    void theTorqueForAChanceIsTheReferences(double chance, double torque) {
        Ceiling.Advice advice = Objects.requireNonNull(ceiling.torqueFor(chance));

        assertThat(1000 * advice.torqueNm()).isCloseTo(torque, within(0.06));
        assertThat(advice.limitedByFlown()).isFalse();
    }

    /** R 4.2.2, survival 3.5-3 and lm: computed independently for this project. */
    @Test
    void heightsAreTakenAsTheCensoredFitTakesThem() {
        double[] fit = {2.9309335255, 0.9858272182, 0.0463240495};
        assertThat(logLikelihood(fit)).isCloseTo(18.6128723315, within(1e-8));
        for (int k = 0; k < 3; k++) {
            for (double side : new double[] {0.999, 1.001}) {
                double[] beside = fit.clone();
                beside[k] *= side;
                assertThat(logLikelihood(beside)).isLessThan(18.6128723315);
            }
        }
    }

    /** The trap: with touched flights dropped the line flattens (reference 2.923222982556, 0.946454420463). */
    @Test
    void droppingTouchedFlightsWouldFlattenTheLine() {
        List<HeightFlight> clear =
                model.flights().stream().filter(f -> !f.touched()).toList();
        double mx = clear.stream().mapToDouble(CeilingTest::q).average().orElseThrow();
        double my =
                clear.stream().mapToDouble(f -> Math.log(f.lowM())).average().orElseThrow();
        double slope = clear.stream()
                        .mapToDouble(f -> (q(f) - mx) * Math.log(f.lowM()))
                        .sum()
                / clear.stream().mapToDouble(f -> (q(f) - mx) * (q(f) - mx)).sum();

        assertThat(slope).isCloseTo(0.946454420463, within(1e-11));
        assertThat(my - slope * mx).isCloseTo(2.923222982556, within(1e-11));
    }

    private static double q(HeightFlight flight) {
        return Math.log(1000 * flight.torqueNm() / 35);
    }

    private static double logLikelihood(double[] fit) {
        return model.flights().stream()
                .mapToDouble(f -> {
                    double z = (Math.log(f.lowM()) - fit[0] - fit[1] * q(f)) / fit[2];
                    return f.touched() ? Math.log(Normal.cumulative(-z)) : Math.log(Normal.density(z) / fit[2]);
                })
                .sum();
    }

    @Test
    void theSentenceNamesTheThreeChances() {
        String interval = "3\\d\\.\\d\\d to (3|4)\\d\\.\\d\\d\\)";
        assertThat(ceiling.sentence(new QuantityFormat(DisplayUnits.METRIC)))
                .matches("35\\.[23]\\d N·mm \\(90 % interval " + interval
                        + " keeps the chance of touching at about 1 in 20"
                        + " \\(16 flights, 4 touched\\)\\. At 36\\.[12]\\d N·mm \\(" + interval
                        + ": 1 in 10\\. At 37\\.[12]\\d N·mm \\(" + interval + ": 1 in 5\\.");
    }

    @Test
    void theIntervalOfATorqueIsWhereTheBandMeetsTheChance() {
        Ceiling.Advice advice = Objects.requireNonNull(ceiling.torqueFor(0.10));

        assertThat(advice.lowNm()).isLessThan(advice.torqueNm());
        assertThat(advice.highNm()).isGreaterThan(advice.torqueNm());
        for (Ceiling.Risk risk : ceiling.curve()) {
            assertThat(risk.high() > 0.10).isEqualTo(risk.torqueNm() > advice.lowNm());
            assertThat(risk.low() > 0.10).isEqualTo(risk.torqueNm() > advice.highNm());
        }
    }

    @Test
    void aTorqueAtTheLimitIsPrintedWithinIt() {
        Ceiling limited = new Ceiling(
                9,
                List.of(new Ceiling.Risk(0.001, 0, 0, 0, false), new Ceiling.Risk(0.002585, 0.01, 0, 0.02, true)),
                new Span(0.002, 0.00235),
                5,
                0,
                List.of());

        assertThat(limited.sentence(new QuantityFormat(DisplayUnits.METRIC))).startsWith("2.58 N·mm, 10 % above");
    }

    @Test
    void nothingIsToldMoreThanTenPercentAboveWhatWasFlown() {
        Ceiling high = Ceiling.of(model, 60);

        assertThat(high.chance(0.0439 * 1.11)).isNull();
        assertThat(high.torqueFor(0.05))
                .satisfies(a ->
                        assertThat(a.torqueNm()).isEqualTo(high.curve().get(120).torqueNm()))
                .satisfies(a -> assertThat(a.limitedByFlown()).isTrue());
        assertThat(high.curve().get(120).torqueNm()).isCloseTo(0.0439 * 1.1, within(1e-9));
        assertThat(high.sentence(new QuantityFormat(DisplayUnits.METRIC)))
                .contains("10 % above the highest torque flown");
        assertThat(Ceiling.of(model, 4).torqueFor(0.05)).isNull();
        assertThat(Ceiling.of(model, 4).sentence(new QuantityFormat(DisplayUnits.METRIC)))
                .startsWith("Even at half");
    }

    @Test
    void theChanceNeverFallsAndLiesInItsBand() {
        double last = 0;
        for (Ceiling.Risk risk : ceiling.curve()) {
            assertThat(risk.chance()).isBetween(last, 1.0).isBetween(risk.low(), risk.high());
            last = risk.chance();
        }
        assertThat(ceiling.curve().get(0).drawn()).isFalse();
        assertThat(ceiling.curve().get(120).drawn()).isTrue();
    }

    @Test
    void theRawCountStandsBeside() {
        assertThat(ceiling.near(0.039)).isEqualTo(new Ceiling.Count(1, 4));
    }

    @ParameterizedTest
    @ValueSource(longs = 1)
    void heightsBetweenMarksTellNearlyAsMuchAsHeightsRead(long seed) {
        Random random = new Random(seed);
        double[] marks = {0, 4, 5.5, 7, 8.5, 9.4};
        List<ReviewFlight> read = new ArrayList<>();
        List<ReviewFlight> ranges = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            double torque = 0.002 + 0.0012 * random.nextDouble();
            double height = 7 * torque / 0.0026 * Math.exp(0.06 * random.nextGaussian());
            boolean touched = height >= 9.4;
            int k = 0;
            while (k < 4 && height >= marks[k + 1]) {
                k++;
            }
            Peak touch = new Peak(null, null, 9.4);
            read.add(flight(i, "s" + i / 6, torque, touched ? touch : new Peak(height, height, null), Map.of()));
            ranges.add(
                    flight(i, "s" + i / 6, torque, touched ? touch : new Peak(marks[k], marks[k + 1], null), Map.of()));
        }
        Ceiling exact = Ceiling.of(known(CeilingModel.of(read, Map.of(), NONE)), 9.4);
        Ceiling within = Ceiling.of(known(CeilingModel.of(ranges, Map.of(), NONE)), 9.4);

        double a = Objects.requireNonNull(exact.torqueFor(0.10)).torqueNm();
        double b = Objects.requireNonNull(within.torqueFor(0.10)).torqueNm();
        assertThat(b / a).as("seed %d", seed).isBetween(0.92, 1.05);
    }

    @Test
    void aTrimThatClimbsHigherHasTheHigherChance() {
        Random random = new Random(8);
        List<ReviewFlight> flights = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            boolean steep = i % 2 == 0;
            double torque = 0.0022 + 0.0008 * random.nextDouble();
            double height = 6 * torque / 0.0026 * (steep ? 1.2 : 1) * Math.exp(0.05 * random.nextGaussian());
            flights.add(flight(
                    i,
                    "s" + i / 6,
                    torque,
                    new Peak(height, height, null),
                    Map.of("incidence", Level.number(steep ? 3 : 2))));
        }
        CeilingModel flat = known(CeilingModel.of(flights, Map.of("incidence", Level.number(2)), NONE));
        CeilingModel steep = known(CeilingModel.of(flights, Map.of("incidence", Level.number(3)), NONE));
        CeilingModel other = known(CeilingModel.of(flights, Map.of("incidence", Level.number(4)), NONE));

        assertThat(steep.chance(0.0026, 7)).isGreaterThan(flat.chance(0.0026, 7) + 0.2);
        // A value never flown is less certain than either.
        assertThat(other.lnPeak(0.0026).quantile(0.95) - other.lnPeak(0.0026).quantile(0.05))
                .isGreaterThan(
                        flat.lnPeak(0.0026).quantile(0.95) - flat.lnPeak(0.0026).quantile(0.05));
    }

    @Test
    void withoutTorqueOrHeightItSaysWhatIsNeeded() {
        List<ReviewFlight> flights = List.of(
                flight(0, "s", 0.0026, Peak.UNKNOWN, Map.of()),
                flight(1, "s", null, new Peak(5.0, 6.0, null), Map.of()),
                flight(2, "s", 0.0026, new Peak(5.0, 6.0, null), Map.of()));

        assertThat(CeilingModel.of(flights, Map.of(), NONE))
                .isEqualTo(Answer.cannotTell("Launch torque and peak height are known together for 1 flight on a full"
                        + " motor. 3 are needed before anything can be told: log both."));
    }

    @Test
    void everyFlightOfTheModelIsCountedAsHighBelowOrNotKnown() {
        List<ReviewFlight> flights = List.of(
                flight(1, "s", 0.0025, new Peak(4.0, 7.9, null), Map.of()),
                flight(2, "s", 0.0026, new Peak(5.5, 5.5, null), Map.of()),
                flight(3, "s", 0.0028, new Peak(7.0, 9.4, null), Map.of()),
                flight(4, "s", 0.0030, new Peak(7.9, 7.9, null), Map.of()),
                flight(5, "s", 0.0031, new Peak(null, null, 7.9), Map.of()));
        Ceiling lamps = Ceiling.of(known(CeilingModel.of(flights, Map.of(), NONE)), 7.9);

        assertThat(lamps.counts()).isEqualTo("2 as high, 2 below, 1 not known");
        assertThat(lamps.reached() + lamps.below() + lamps.notKnown()).isEqualTo(lamps.flights());
    }
}
