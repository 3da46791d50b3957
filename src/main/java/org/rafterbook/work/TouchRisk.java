package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Ceiling;

/**
 * The chance to touch something by launch torque.
 *
 * @param limit what is in the way
 * @param trim name of the version it is told for
 * @param chosen the chance the flyer takes, 0 to 1
 */
public record TouchRisk(HeightMark limit, String trim, Ceiling ceiling, double chosen) {

    /** Chances to choose among, the careful ones first. */
    public static final double[] CHANCES = {0.05, 0.10, 0.15, 0.20, 0.30};

    static final double USUAL = 0.10;

    /** The chance after the chosen one, the first again after the last. */
    public double next() {
        for (double chance : CHANCES) {
            if (chance > chosen + 1e-9) {
                return chance;
            }
        }
        return CHANCES[0];
    }

    /** The torque for the chosen chance; null where even half the lowest torque flown has a higher one. */
    public Ceiling.@Nullable Advice advice() {
        return ceiling.torqueFor(chosen);
    }

    /** A chance as the flyer reads it, such as "15 in 100". */
    public static String inHundred(double chance) {
        return chance < 0.005 ? "less than 1 in 100" : Math.round(100 * chance) + " in 100";
    }
}
