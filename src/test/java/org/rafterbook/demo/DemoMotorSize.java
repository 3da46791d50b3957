package org.rafterbook.demo;

/** Loop length when tied, mm, and mass, g, of a model's full motors. */
record DemoMotorSize(double loopMm, double massG) {

    /**
     * Turns at which it breaks: {@code K L^1.5 / m^0.5} with L in inches, the customary formula with a constant of the
     * batch (published practice, public builders' mailing-list archive, messages 1310/15340 and 1804/21311).
     */
    double breakingTurns(double turnsConstant) {
        return turnsConstant * StrictMath.pow(loopMm / 25.4, 1.5) / StrictMath.sqrt(massG);
    }

    /** Highest torque, N mm: {@code 0.78354 (m/L)^1.5} with g and m (the same archive, message 1310/15340, in SI). */
    double highestTorque() {
        return 0.78354 * StrictMath.pow(massG / (loopMm / 1000), 1.5);
    }

    DemoMotorSize part(double fraction) {
        return new DemoMotorSize(loopMm * fraction, massG * fraction);
    }
}
