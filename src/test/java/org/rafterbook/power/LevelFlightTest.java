package org.rafterbook.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.CheckRows;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.Unit;

/** Rows C28 to C38; each row of the file carries its source and standing. */
class LevelFlightTest {

    private static final CheckRows CHECKS = CheckRows.of("power.csv");

    // The published light model of rows C28 and C29: weight, N, area, m2, coefficients, standard density.
    private static final double WEIGHT = 0.018;
    private static final double AREA = 0.11;
    private static final double CL = 0.6;
    private static final double CD = 0.12;
    private static final double DENSITY = 1.225;

    @Test
    void speedAndDragOfThePublishedModel() {
        CHECKS.hold("C28", LevelFlight.speedMPerS(WEIGHT, AREA, CL, DENSITY));
        CHECKS.hold("C29", LevelFlight.dragN(WEIGHT, CL, CD));
    }

    // 2.40 mW and 0.1335 m/s: computed independently for this project from the published model's figures.
    @Test
    void powerAndSinkOfThePublishedModel() {
        assertThat(LevelFlight.powerW(WEIGHT, AREA, CL, CD, DENSITY)).isCloseTo(2.40e-3, within(0.01e-3));
        assertThat(LevelFlight.sinkMPerS(WEIGHT, AREA, CL, CD, DENSITY)).isCloseTo(0.1335, within(0.0001));
    }

    @Test
    void shaftPowerAndEfficiencyOfThePublishedPropeller() {
        double shaft = shaftPower("C31a");
        CHECKS.hold("C31a", Unit.MILLI_W.fromSi(shaft));
        double thrust = CHECKS.input("C31b", "T_mN") / 1000;
        double published = Unit.MILLI_W.toSi(CHECKS.input("C31b", "P_mW"));
        CHECKS.hold("C31b", LevelFlight.propellerEfficiency(thrust, CHECKS.input("C31b", "V"), published));
    }

    @ParameterizedTest
    @ValueSource(strings = {"C32", "C34"})
    void efficiencyOfPublishedPropellersInLevelCruise(String row) {
        double efficiency =
                LevelFlight.propellerEfficiency(CHECKS.input(row, "T_N"), CHECKS.input(row, "V"), shaftPower(row));
        CHECKS.hold(row, efficiency);
    }

    @Test
    void durationIsBestNearAMotorOfTwiceTheAirframe() {
        double near = LevelFlight.durationByMotorMass(CHECKS.input("C35", "x"), 1);
        CHECKS.hold("C35", near / LevelFlight.durationByMotorMass(CHECKS.input("C35", "ref"), 1));
        assertThat(LevelFlight.durationByMotorMass(2.1, 1)).isLessThan(LevelFlight.durationByMotorMass(2, 1));
    }

    @Test
    void powerGrowsWithMassToTheThreeHalves() {
        CHECKS.hold("C36", 1 - LevelFlight.powerRatio(1.6e-3, 1.8e-3));
        assertThat(LevelFlight.durationRatio(1.6e-3, 1.8e-3, 1.2, 1.2)).isCloseTo(1 / (1 - 0.162), within(0.001));
        // Standard mechanics: a quarter less density costs a seventh of the time, sqrt(0.75).
        assertThat(LevelFlight.durationRatio(1.8e-3, 1.8e-3, 0.9, 1.2)).isCloseTo(Math.sqrt(0.75), within(1e-12));
    }

    @Test
    void aLighterMotorGivesTwoThirdsOfTheTime() {
        double airframe = Unit.G.toSi(CHECKS.input("C37", "m_a"));
        double motor = Unit.G.toSi(CHECKS.input("C37", "m_r0"));
        CHECKS.hold("C37", Unit.G.fromSi(LevelFlight.motorKgForTimeShare(2.0 / 3, motor, airframe)));
        assertThat(LevelFlight.motorKgForTimeShare(1, motor, airframe)).isCloseTo(motor, within(1e-12));
    }

    // Rows C38a and C38b: ratios of published times, read in the source as minutes and seconds.
    @Test
    void publishedTimesAreReadAndCompared() {
        CHECKS.hold("C38a", seconds("69:32") / seconds("50:10"));
        CHECKS.hold("C38b", seconds("42:03") / seconds("30:07"));
    }

    private static double shaftPower(String row) {
        double torque = Unit.MILLI_NM.toSi(CHECKS.input(row, "Q_mNm"));
        return LevelFlight.shaftPowerW(Unit.RPM.toSi(CHECKS.input(row, "rpm")), torque);
    }

    private static double seconds(String text) {
        return QuantityParser.typed(Quantity.TIME, DisplayUnits.METRIC)
                .read(text)
                .orThrow()
                .si();
    }
}
