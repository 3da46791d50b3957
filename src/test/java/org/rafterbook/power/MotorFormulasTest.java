package org.rafterbook.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.CheckRows;
import org.rafterbook.units.Unit;
import org.rafterbook.units.UserError;

/** Rows C4 to C39; each row of the file carries its source and standing. */
class MotorFormulasTest {

    private static final CheckRows CHECKS = CheckRows.of("power.csv");

    // Row C4: 45.67 stands in the source, "read in the source"; 45.08 of rows C9 to C13 is implied by its table.
    private static final double K_PUBLISHED = 45.67;
    private static final double K_TABLE = 45.08;

    @Test
    void breakingTurnsAgreeWithPublishedMotors() {
        CHECKS.hold("C4", MotorLimits.breakingTurns(K_PUBLISHED, inches("C4", "L_in"), grams("C4", "m_g")));
        CHECKS.hold("C7", MotorLimits.breakingTurns(K_PUBLISHED, millimetres("C7", "L_mm"), grams("C7", "m_g")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"C9", "C11", "C13"})
    void breakingTurnsAgreeWithTheTableByStripDensity(String row) {
        double strip = Unit.G_PER_M.toSi(CHECKS.input(row, "lambda_strip_g_per_m"));
        double mass = grams(row, "m_g");
        double loop = LoopGeometry.loopLengthM(mass, strip);
        CHECKS.hold(row, MotorLimits.breakingTurns(K_TABLE, loop, mass));
        assertThat(LoopGeometry.stripDensityKgPerM(mass, loop)).isCloseTo(strip, within(1e-15));
        assertThat(LoopGeometry.loopDensityKgPerM(mass, loop)).isCloseTo(2 * strip, within(1e-15));
        assertThat(LoopGeometry.stripLengthM(loop)).isCloseTo(mass / strip, within(1e-12));
    }

    @Test
    void breakingTorqueAgreesWithPublishedMotors() {
        CHECKS.hold("C5", Unit.IN_OZ.fromSi(MotorLimits.breakingTorqueNm(inches("C5", "L_in"), grams("C5", "m_g"))));
        CHECKS.hold(
                "C6", Unit.GF_CM.fromSi(MotorLimits.breakingTorqueNm(millimetres("C6", "L_mm"), grams("C6", "m_g"))));
    }

    @Test
    void theBandFollowsTheTurnsConstant() {
        MotorLimits.Band band = MotorLimits.breakingTurnsBand(0.340, 0.00104);
        assertThat(band.expected()).isCloseTo(MotorLimits.breakingTurns(44.5, 0.340, 0.00104), within(1e-9));
        assertThat(band.low() / band.expected()).isCloseTo(41.5 / 44.5, within(1e-12));
        assertThat(band.high() / band.expected()).isCloseTo(47.5 / 44.5, within(1e-12));
        assertThat(MotorLimits.turnsConstant(band.low(), 0.340, 0.00104)).isCloseTo(41.5, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void aMotorWithoutLengthOrMassIsRefused(double nothing) {
        assertThatThrownBy(() -> MotorLimits.breakingTurns(45, nothing, 0.001)).isInstanceOf(UserError.class);
        assertThatThrownBy(() -> MotorLimits.breakingTorqueNm(0.3, nothing)).isInstanceOf(UserError.class);
        assertThatThrownBy(() -> new Winder(nothing)).isInstanceOf(UserError.class);
        assertThatThrownBy(() -> new PartialMotor(nothing)).isInstanceOf(UserError.class);
    }

    @Test
    void handleTurnsBecomeMotorTurns() {
        assertThat(new Winder(15).motorTurns(117)).isEqualTo(1755);
        assertThat(new Winder(15).handleTurns(1755)).isEqualTo(117);
        assertThat(Winder.DIRECT.motorTurns(1755)).isEqualTo(1755);
    }

    @Test
    void aHalfMotorFliesWithItsSpacer() {
        PartialMotor half = new PartialMotor(CHECKS.input("C39", "f"));
        double lengthIn = Unit.IN.fromSi(half.spacerLengthM(inches("C39", "hook_in")));
        double massG = Unit.G.fromSi(half.spacerMassKg(grams("C39", "full_g")));
        CHECKS.hold("C39", new double[] {lengthIn, massG});
        assertThat(half.full(300)).isEqualTo(600);
    }

    private static double inches(String row, String name) {
        return Unit.IN.toSi(CHECKS.input(row, name));
    }

    private static double millimetres(String row, String name) {
        return Unit.MM.toSi(CHECKS.input(row, name));
    }

    private static double grams(String row, String name) {
        return Unit.G.toSi(CHECKS.input(row, name));
    }
}
