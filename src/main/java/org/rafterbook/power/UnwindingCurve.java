package org.rafterbook.power;

import java.util.function.DoubleUnaryOperator;
import org.rafterbook.units.UserError;

/**
 * Torque of a wound motor as it unwinds: q(n) = A n^p + (1 - A) exp(-(1 - n) / b), with n the turns left over the turns
 * wound and q the torque over the highest torque reached, both fractions of the <em>wound</em> turns, not of the
 * breaking turns.
 *
 * <p>The form and {@link #REFERENCE} were fitted for this project to published anchor points (public builders'
 * mailing-list archive, messages 0612/1700, 0703/2477, 0612/1707, 1411/17731, 1106/9514, 1211/13058); they are not
 * themselves published. Between batches the curve differs; a batch's own readings come before it.
 *
 * @param plateau A, height of the slow part, 0 to 1
 * @param exponent p of the slow part, above 0
 * @param burst b, share of the turns over which the steep first part dies away, above 0
 */
public record UnwindingCurve(double plateau, double exponent, double burst) {

    /** Stands in until a batch has readings of its own. */
    public static final UnwindingCurve REFERENCE = new UnwindingCurve(0.22, 0.40, 0.08);

    /** Halvings of the unit interval down to the last digit of a double. */
    private static final int HALVINGS = 53;

    public UnwindingCurve {
        if (!(plateau >= 0 && plateau <= 1) || !(exponent > 0) || !(burst > 0)) {
            throw UserError.badInput(
                    "An unwinding curve needs a plateau from 0 to 1, an exponent and a burst above 0.");
        }
    }

    /** Torque over the highest torque with the share n of the turns left; 1 at n = 1. */
    public double torqueShare(double turnsShare) {
        double n = share(turnsShare);
        return plateau * Math.pow(n, exponent) + (1 - plateau) * Math.exp(-(1 - n) / burst);
    }

    /** Mean torque over the highest torque from full turns to none: the integral of q. */
    public double meanTorqueShare() {
        return integral(1);
    }

    /** Energy still stored with the share n of the turns left, over the energy at full turns. */
    public double energyShare(double turnsShare) {
        return integral(share(turnsShare)) / integral(1);
    }

    /** Share of the turns left when the energy has fallen to this share: inverse of {@link #energyShare}. */
    public double turnsShareAtEnergy(double energyShare) {
        double wanted = share(energyShare);
        return solve(n -> energyShare(n) - wanted);
    }

    /** Share of the turns left when the torque has fallen to this share; 0 where it never falls so far. */
    public double turnsShareAtTorque(double torqueShare) {
        double wanted = share(torqueShare);
        return solve(n -> torqueShare(n) - wanted);
    }

    /** Share of the wound turns to back off for a launch torque over the highest torque reached. */
    public double backOffShare(double launchTorqueShare) {
        return 1 - turnsShareAtTorque(launchTorqueShare);
    }

    /** Integral of q from 0 to n. */
    double integral(double n) {
        double slow = plateau * Math.pow(n, exponent + 1) / (exponent + 1);
        double steep = (1 - plateau) * burst * (Math.exp(-(1 - n) / burst) - Math.exp(-1 / burst));
        return slow + steep;
    }

    private static double share(double value) {
        if (!(value >= 0 && value <= 1)) {
            throw UserError.badInput("A share of turns, torque or energy lies between 0 and 100 %.");
        }
        return value;
    }

    /** Bisection of a rising function over the unit interval. */
    static double solve(DoubleUnaryOperator rising) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (rising.applyAsDouble(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return rising.applyAsDouble(0) >= 0 ? 0 : high;
    }
}
