package org.rafterbook.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Balance from masses, from measurement, and carried from one to the other; all values follow from moments (exact). */
class BalanceTest {

    private static final double MM = 1e-3;
    private static final double G = 1e-3;

    private static Airframe bare(double massG, double aftMm) {
        return new Airframe(List.of(), List.of(new MassItem("airframe", massG * G, aftMm * MM, 0)), null, null);
    }

    private static MotorPlace motor(double massG) {
        return new MotorPlace(massG * G, 120 * MM);
    }

    private static Airframe withWing(double wingAftMm) {
        Surface wing =
                Surface.symmetric("wing", Role.WING, wingAftMm * MM, 0, 0, 0, Planforms.rectangle(420 * MM, 110 * MM));
        return new Airframe(
                List.of(wing),
                List.of(
                        new MassItem("wing", 0.9 * G, (wingAftMm + 50) * MM, 0),
                        new MassItem("stick", 2.5 * G, 160 * MM, 0)),
                null,
                motor(1.6));
    }

    @Test
    void aHeavierMotorAheadMovesTheBalanceForward() {
        Airframe airframe = bare(3.40, 150);
        assertThat(Balance.of(airframe, motor(1.60)).aftM()).isCloseTo(0.14040, within(1e-9));
        assertThat(Balance.of(airframe, motor(2.00)).aftM()).isCloseTo(0.75 / 5.4, within(1e-9));
        assertThat(Balance.of(airframe, motor(2.00)).aftM()).isCloseTo(0.13889, within(5e-6));
        assertThat(Balance.of(airframe, motor(2.00)).massKg()).isCloseTo(5.4e-3, within(1e-12));
    }

    @Test
    void aSlidWingTakesItsMassAlong() {
        Airframe at100 = withWing(100);
        Airframe at110 = AirframeEdits.moved(at100, "wing", 0.110, 0);
        double before = aft(Balance.of(at100, null));
        assertThat(Balance.of(at100, null).massKg()).isCloseTo(5e-3, within(1e-12));
        assertThat(aft(Balance.of(at110, null)) - before).isCloseTo(1.8 * MM, within(1e-12));
        BalancePoint carried = Balance.carried(at100, 0.2, motor(1.6), null, at110, motor(1.6));
        assertThat(carried.aftM()).isCloseTo(0.2018, within(1e-12));
        assertThat(carried.origin()).isEqualTo(BalancePoint.Origin.CARRIED);
    }

    @Test
    void aMeasuredBalanceWinsOverTheMasses() {
        Airframe sheet = withWing(100);
        Airframe measured = new Airframe(sheet.surfaces(), sheet.masses(), 0.123, sheet.motor());
        BalancePoint balance = Balance.of(measured, null);
        assertThat(balance.aftM()).isEqualTo(0.123);
        assertThat(balance.origin()).isEqualTo(BalancePoint.Origin.MEASURED);
        assertThat(balance.missing()).isNull();
    }

    @Test
    void anotherMotorKeepsTheAirframesOwnMoment() {
        Airframe sheet = withWing(100);
        Airframe measured = new Airframe(sheet.surfaces(), sheet.masses(), 0.1404, sheet.motor());
        // 3.40 g of airframe measured at 140.40 mm with 1.60 g at 120 mm balances bare at 150 mm.
        assertThat(Balance.of(measured, motor(2.0)).aftM()).isCloseTo(0.75 / 5.4, within(1e-12));
    }

    @Test
    void theScaleWinsOverTheSumOfMassesForTheOwnMoment() {
        Airframe sheet = withWing(100);
        BalancePoint carried = Balance.carried(sheet, 0.140, motor(1.6), 6.0e-3, sheet, motor(2.0));
        double own = 6.0 * 140 - 1.6 * 120;
        assertThat(carried.aftM()).isCloseTo((own + 2.0 * 120) / 6.4 * MM, within(1e-12));
        assertThat(carried.massKg()).isCloseTo(6.4e-3, within(1e-12));
    }

    @Test
    void eachUnknownSaysWhatIsMissing() {
        Airframe none = new Airframe(List.of(), List.of(), null, motor(1.6));
        assertThat(Balance.of(none, null).aftM()).isNull();
        assertThat(Balance.of(none, null).missing()).contains("No mass");

        Airframe measuredOnly = new Airframe(List.of(), List.of(), 0.14, motor(1.6));
        assertThat(Balance.of(measuredOnly, null).aftM()).isEqualTo(0.14);
        assertThat(Balance.of(measuredOnly, null).missing()).contains("mass is unknown");
        assertThat(Balance.of(measuredOnly, motor(2.0)).aftM()).isNull();
        assertThat(Balance.of(measuredOnly, motor(2.0)).missing()).contains("another motor");

        Airframe noWingMass = new Airframe(
                withWing(100).surfaces(), List.of(new MassItem("all", 3.4 * G, 0.15, 0)), 0.14, motor(1.6));
        Airframe slid = AirframeEdits.moved(noWingMass, "wing", 0.110, 0);
        BalancePoint carried = Balance.carried(noWingMass, 0.14, motor(1.6), null, slid, motor(1.6));
        assertThat(carried.aftM()).isNull();
        assertThat(carried.missing()).contains("\"wing\" was moved by 10.0 mm").contains("enter a mass");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void carryingAgreesWithMassesForRandomMassesAndSlides(long seed) {
        Random random = new Random(seed);
        Surface wing = Surface.symmetric("wing", Role.WING, 0.1, 0, 0, 0, Planforms.rectangle(420 * MM, 110 * MM));
        MassItem wingMass = new MassItem("wing", (0.3 + random.nextDouble()) * G, 0.15, 0);
        MassItem stick = new MassItem("stick", (1 + random.nextDouble()) * G, 0.1 + 0.1 * random.nextDouble(), 0);
        MotorPlace first = new MotorPlace((1 + random.nextDouble()) * G, 0.12);
        MotorPlace second = new MotorPlace((1 + random.nextDouble()) * G, 0.12 + 0.05 * random.nextDouble());
        Airframe before = new Airframe(List.of(wing), List.of(wingMass, stick), null, first);
        double slide = (random.nextDouble() - 0.5) * 0.04;
        Airframe after = AirframeEdits.moved(before, "wing", 0.1 + slide, 0);
        double measured = aft(Balance.of(before, null));

        double total = wingMass.massKg() + stick.massKg() + second.massKg();
        double expected =
                (wingMass.massKg() * (0.15 + slide) + stick.massKg() * stick.aftM() + second.massKg() * second.aftM())
                        / total;
        assertThat(aft(Balance.of(after, second))).isCloseTo(expected, within(1e-12));
        assertThat(aft(Balance.carried(before, measured, first, null, after, second)))
                .isCloseTo(expected, within(1e-12));
    }

    private static double aft(BalancePoint balance) {
        Double aft = balance.aftM();
        assertThat(aft).isNotNull();
        return aft == null ? Double.NaN : aft;
    }
}
