package org.rafterbook.review;

import org.rafterbook.units.Counted;

/**
 * How many changes a season judged, and how often one like it claims something although nothing had any effect.
 *
 * @param judged changes judged, those that moved together counted once
 */
public record Claims(int judged) {

    /** Chance that one change that did nothing is called very probably or stronger: .15 in a season of 7.8 changes. */
    private static final double FALSE_VERY_PROBABLE = 1 - StrictMath.pow(1 - 0.15, 1 / 7.8);

    /** The same for 'raised' or 'lowered': .06 in a season of 7.8 changes. */
    private static final double FALSE_SURE = 1 - StrictMath.pow(1 - 0.06, 1 / 7.8);

    /** In full; empty where nothing was judged. */
    public String sentence() {
        return judged == 0
                ? ""
                : (judged == 1 ? "1 change was judged." : judged + " changes were judged.")
                        + " If none of them had any effect, a season like this would still show a \u201cvery probably\u201d"
                        + " or stronger about once in " + onceIn(FALSE_VERY_PROBABLE)
                        + " seasons, a \u201craised\u201d or \u201clowered\u201d about once in " + onceIn(FALSE_SURE)
                        + ".";
    }

    /** In one line; empty where nothing was judged. */
    public String line() {
        return judged == 0
                ? ""
                : Counted.of(judged, "change")
                        + " judged. If none had any effect, a season like this would still show a \u201craised\u201d or"
                        + " \u201clowered\u201d about once in " + onceIn(FALSE_SURE) + ".";
    }

    private long onceIn(double chance) {
        return Math.max(2, Math.round(1 / (1 - StrictMath.pow(1 - chance, judged))));
    }
}
