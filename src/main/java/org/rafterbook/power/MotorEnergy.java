package org.rafterbook.power;

import org.rafterbook.units.UserError;

/** Energy of a wound motor, J: E = 2 π times the integral of torque over turns. */
public final class MotorEnergy {

    private static final double TURN = 2 * Math.PI;

    private MotorEnergy() {}

    /**
     * Energy given back from so many turns on the motor down to so many left, by an unwinding curve.
     *
     * @param maxTorqueNm highest torque reached in winding
     * @param turnsWound turns at that torque
     * @param turnsFrom turns at the start, after backing off
     * @param turnsTo turns left at the end
     */
    public static double between(
            UnwindingCurve curve, double maxTorqueNm, double turnsWound, double turnsFrom, double turnsTo) {
        if (!(turnsWound > 0 && turnsWound >= turnsFrom && turnsFrom >= turnsTo && turnsTo >= 0)) {
            throw UserError.badInput("Turns must fall from wound to launch to left, and none may be negative.");
        }
        double shares = curve.integral(turnsFrom / turnsWound) - curve.integral(turnsTo / turnsWound);
        return TURN * maxTorqueNm * turnsWound * shares;
    }

    /** Energy of a motor wound to so many turns at so high a torque and let run out. */
    public static double whole(UnwindingCurve curve, double maxTorqueNm, double turnsWound) {
        return between(curve, maxTorqueNm, turnsWound, turnsWound, 0);
    }
}
