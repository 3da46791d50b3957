package org.rafterbook.power;

import org.rafterbook.units.Unit;
import org.rafterbook.units.UserError;

/**
 * Turns and torque at which a rubber loop breaks.
 *
 * <p>N = K L^1.5 / m^0.5 with the loop length L as tied, in, the mass m, g, and the turns constant K, in^-1.5 g^0.5
 * (published practice, public builders' mailing-list archive, messages 1310/15340, 1804/21311, 1804/21319, 0803/4018:
 * K = 45.67, 44.2, 44, 45.08). K belongs to a batch and a person; before either is known it is
 * {@value #PRIOR_TURNS_CONSTANT} ± {@value #PRIOR_SPREAD}.
 *
 * <p>Q = (m / (0.11 L))^1.5 in-oz (message 1310/15340, a guideline there). Motors are reported to break at as little as
 * 0.6 of it, so the flyer's own broken motors come before it.
 */
public final class MotorLimits {

    /** Turns constant where nothing is known of the batch, in^-1.5 g^0.5. */
    public static final double PRIOR_TURNS_CONSTANT = 44.5;

    /** Spread of the turns constant between batches and flyers, in^-1.5 g^0.5. */
    public static final double PRIOR_SPREAD = 3;

    private static final double TORQUE_DIVISOR = 0.11;
    private static final double EXPONENT = 1.5;

    private MotorLimits() {}

    /** Turns at which a loop is expected to break. */
    public static double breakingTurns(double turnsConstant, double loopLengthM, double massKg) {
        check(loopLengthM, massKg);
        return turnsConstant * Math.pow(Unit.IN.fromSi(loopLengthM), EXPONENT) / Math.sqrt(Unit.G.fromSi(massKg));
    }

    /** Breaking turns with their band before anything is known of the batch. */
    public static Band breakingTurnsBand(double loopLengthM, double massKg) {
        return breakingTurnsBand(PRIOR_TURNS_CONSTANT, PRIOR_SPREAD, loopLengthM, massKg);
    }

    /** Breaking turns with the band that the turns constant's spread makes. */
    public static Band breakingTurnsBand(double turnsConstant, double spread, double loopLengthM, double massKg) {
        return new Band(
                breakingTurns(turnsConstant - spread, loopLengthM, massKg),
                breakingTurns(turnsConstant, loopLengthM, massKg),
                breakingTurns(turnsConstant + spread, loopLengthM, massKg));
    }

    /** The turns constant of a motor that broke at so many turns, in^-1.5 g^0.5. */
    public static double turnsConstant(double turnsAtBreak, double loopLengthM, double massKg) {
        return turnsAtBreak / breakingTurns(1, loopLengthM, massKg);
    }

    /** Torque at which a loop is expected to break, N m: a soft ceiling. */
    public static double breakingTorqueNm(double loopLengthM, double massKg) {
        check(loopLengthM, massKg);
        double gramsPerInch = Unit.G.fromSi(massKg) / Unit.IN.fromSi(loopLengthM);
        return Unit.IN_OZ.toSi(Math.pow(gramsPerInch / TORQUE_DIVISOR, EXPONENT));
    }

    /** An expectation with the lower and upper end of its band. */
    public record Band(double low, double expected, double high) {}

    private static void check(double loopLengthM, double massKg) {
        if (!(loopLengthM > 0) || !(massKg > 0)) {
            throw UserError.badInput("A motor needs a loop length and a mass above zero.");
        }
    }
}
