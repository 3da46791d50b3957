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

    /**
     * Energy between the first and the last of a series of readings, taken at any spacing.
     *
     * <p>Parabolas through each three readings in turn (composite Simpson rule, in its form for unequal spacing; the
     * customary unwinding test takes about 14 equal steps); an odd last interval uses the parabola through the last
     * three readings. Two readings make a trapezium.
     *
     * @param turns strictly rising or strictly falling
     * @param torqueNm one torque for each
     */
    public static double fromReadings(double[] turns, double[] torqueNm) {
        int intervals = turns.length - 1;
        if (turns.length != torqueNm.length || intervals < 1) {
            throw UserError.badInput("An energy needs at least two readings of turns and torque.");
        }
        double direction = Math.signum(turns[intervals] - turns[0]);
        for (int i = 0; i < intervals; i++) {
            if (!((turns[i + 1] - turns[i]) * direction > 0)) {
                throw UserError.badInput("Readings of an unwinding run one way: turns may not repeat or turn back.");
            }
        }
        return TURN * direction * integral(turns, torqueNm);
    }

    private static double integral(double[] x, double[] y) {
        int intervals = x.length - 1;
        if (intervals == 1) {
            return (x[1] - x[0]) * (y[0] + y[1]) / 2;
        }
        double sum = 0;
        for (int i = 0; i + 2 <= intervals; i += 2) {
            double h = x[i + 1] - x[i];
            double k = x[i + 2] - x[i + 1];
            sum += (h + k) / 6 * ((2 - k / h) * y[i] + (h + k) * (h + k) / (h * k) * y[i + 1] + (2 - h / k) * y[i + 2]);
        }
        if (intervals % 2 == 1) {
            double h = x[intervals - 1] - x[intervals - 2];
            double k = x[intervals] - x[intervals - 1];
            sum += y[intervals] * (2 * k * k + 3 * h * k) / (6 * (h + k))
                    + y[intervals - 1] * (k * k + 3 * h * k) / (6 * h)
                    - y[intervals - 2] * k * k * k / (6 * h * (h + k));
        }
        return sum;
    }
}
