package org.rafterbook.review;

import org.jspecify.annotations.Nullable;

/**
 * The motor of one flight and what was put into it, as recorded (a partial motor's own turns, not scaled to a full one).
 *
 * @param motorId the motor, null where not noted
 * @param windsBefore times this motor had been wound before
 * @param turnsUsed wound less backed off less left, motor turns
 * @param launchTorqueNm torque at launch, N m
 * @param partialFraction share of the full motor that was flown with a spacer, 1 for a full motor
 */
public record MotorUse(
        @Nullable String motorId,
        @Nullable Integer windsBefore,
        @Nullable Double turnsUsed,
        @Nullable Double launchTorqueNm,
        double partialFraction) {

    /** A full motor of which nothing was noted. */
    public static final MotorUse UNKNOWN = new MotorUse(null, null, null, null, 1);

    public MotorUse {
        if (!(partialFraction > 0 && partialFraction <= 1)) {
            throw new IllegalArgumentException("partial fraction " + partialFraction);
        }
    }

    /** A full motor of which only the turns used are known. */
    public static MotorUse turns(@Nullable Double turnsUsed) {
        return new MotorUse(null, null, turnsUsed, null, 1);
    }

    public boolean isPartial() {
        return partialFraction < 1;
    }

    /** Turns used, scaled to the full motor. */
    public @Nullable Double fullTurns() {
        return turnsUsed == null ? null : Double.valueOf(turnsUsed / partialFraction);
    }
}
