package org.rafterbook.power;

import org.rafterbook.units.UserError;

/**
 * A geared winder; logs may count its handle's turns, the program keeps the motor's.
 *
 * @param ratio motor turns for one turn of the handle
 */
public record Winder(double ratio) {

    /** A winder without gears, or counted in motor turns. */
    public static final Winder DIRECT = new Winder(1);

    public Winder {
        if (!(ratio > 0) || Double.isInfinite(ratio)) {
            throw UserError.badInput("A winder's ratio is a number above zero, such as 15 for 15 to 1.");
        }
    }

    public double motorTurns(double handleTurns) {
        return handleTurns * ratio;
    }

    public double handleTurns(double motorTurns) {
        return motorTurns / ratio;
    }
}
