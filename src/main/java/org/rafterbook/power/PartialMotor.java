package org.rafterbook.power;

import org.rafterbook.units.UserError;

/**
 * A part of the full motor of the same cross-section, flown with a spacer: its time, turns and height stand for the full
 * motor's divided by the fraction (published practice, public builders' mailing-list archive, messages 0906/5733,
 * 1106/9528). Held to row C39 of the reference checks; no screen scales a partial flight up.
 *
 * @param fraction mass of the part over the mass of the full motor, above 0 and at most 1
 */
public record PartialMotor(double fraction) {

    public PartialMotor {
        if (!(fraction > 0 && fraction <= 1)) {
            throw UserError.badInput("A partial motor is a part of the full one, above 0 and at most 1.");
        }
    }

    /** Time, turns or height of the full motor from the partial motor's. */
    public double full(double partial) {
        return partial / fraction;
    }

    /** Length of the spacer between hooks so far apart, m. */
    public double spacerLengthM(double hookToHookM) {
        return (1 - fraction) * hookToHookM;
    }

    /** Mass of the spacer with its ballast, kg; its centre sits at its middle, so the balance point stays. */
    public double spacerMassKg(double fullMotorKg) {
        return (1 - fraction) * fullMotorKg;
    }
}
