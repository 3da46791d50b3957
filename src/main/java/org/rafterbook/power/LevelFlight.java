package org.rafterbook.power;

/**
 * Steady level flight of a whole model: standard flight mechanics (worked through for a light model in published
 * practice, public builders' mailing-list archive, messages 0608/1255 and 0608/1272). SI throughout; coefficients refer
 * to the area given.
 *
 * <p>No screen asks for it yet: it holds the published worked examples C28, C29, C31, C32 and C34 to C37 of the reference
 * checks.
 */
public final class LevelFlight {

    private static final double MASS_EXPONENT = 1.5;

    private LevelFlight() {}

    /** Speed, m/s: sqrt(2 W / (ρ S C_L)). */
    public static double speedMPerS(double weightN, double areaM2, double liftCoefficient, double densityKgPerM3) {
        return Math.sqrt(2 * weightN / (densityKgPerM3 * areaM2 * liftCoefficient));
    }

    /** Drag, and the thrust that balances it, N: W C_D / C_L. */
    public static double dragN(double weightN, double liftCoefficient, double dragCoefficient) {
        return weightN * dragCoefficient / liftCoefficient;
    }

    /** Sink with the propeller's thrust gone, m/s: power over weight, sqrt(2 W / (ρ S)) C_D / C_L^1.5. */
    public static double sinkMPerS(
            double weightN, double areaM2, double liftCoefficient, double dragCoefficient, double densityKgPerM3) {
        return speedMPerS(weightN, areaM2, liftCoefficient, densityKgPerM3) * dragCoefficient / liftCoefficient;
    }

    /** Power that holds the model level, W: drag times speed. */
    public static double powerW(
            double weightN, double areaM2, double liftCoefficient, double dragCoefficient, double densityKgPerM3) {
        return weightN * sinkMPerS(weightN, areaM2, liftCoefficient, dragCoefficient, densityKgPerM3);
    }

    /** Power the motor gives to the propeller, W: 2 π times turns per second times torque. */
    public static double shaftPowerW(double turnsPerS, double torqueNm) {
        return 2 * Math.PI * turnsPerS * torqueNm;
    }

    /** Propeller efficiency: thrust times speed over shaft power. */
    public static double propellerEfficiency(double thrustN, double speedMPerS, double shaftPowerW) {
        return thrustN * speedMPerS / shaftPowerW;
    }

    /** Level power at another mass over level power now, at the same trim: (m'/m)^1.5. */
    public static double powerRatio(double otherMassKg, double massKg) {
        return Math.pow(otherMassKg / massKg, MASS_EXPONENT);
    }

    /** Duration at another mass and density over duration now, on the same energy and trim: (m/m')^1.5 (ρ'/ρ)^0.5. */
    public static double durationRatio(double otherMassKg, double massKg, double otherDensity, double density) {
        return Math.sqrt(otherDensity / density) / powerRatio(otherMassKg, massKg);
    }

    /**
     * Duration as it depends on the motor's mass alone, in arbitrary units: m_r / (m_a + m_r)^1.5; greatest where the
     * motor weighs twice the airframe.
     */
    public static double durationByMotorMass(double motorKg, double airframeKg) {
        return motorKg / Math.pow(airframeKg + motorKg, MASS_EXPONENT);
    }

    /** The lighter motor that gives a share (0 to 1) of the time a motor gives, all of it usable, kg. */
    public static double motorKgForTimeShare(double share, double motorKg, double airframeKg) {
        double wanted = share * durationByMotorMass(motorKg, airframeKg);
        double heaviest = Math.min(motorKg, 2 * airframeKg);
        return heaviest * UnwindingCurve.solve(x -> durationByMotorMass(x * heaviest, airframeKg) - wanted);
    }
}
