package org.rafterbook.demo;

/**
 * How a wound motor gives its energy back, for the simulation: torque over the share n of the turns still on it, as a
 * share of the torque at full wind, {@code 0.22 n^0.4 + 0.78 exp(-(1 - n)/0.08)}. The shape was fitted for this project
 * to published back-off and energy statements.
 */
final class DemoRubber {

    private static final double PLATEAU = 0.22;
    private static final double BURST = 0.78;
    private static final double DECAY = 0.08;

    private DemoRubber() {}

    static double torque(double share) {
        return PLATEAU * StrictMath.pow(share, 0.4) + BURST * StrictMath.exp(-(1 - share) / DECAY);
    }

    /** Energy still in the motor at this share of turns, over what it would be at constant full torque. */
    static double energy(double share) {
        return PLATEAU / 1.4 * StrictMath.pow(share, 1.4)
                + BURST * DECAY * (StrictMath.exp(-(1 - share) / DECAY) - StrictMath.exp(-1 / DECAY));
    }

    /** Share of the turns at which the torque has fallen to this share of the highest, by bisection. */
    static double shareAtTorque(double torque) {
        double low = 0.5;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (torque(middle) < torque) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
