package org.rafterbook.review;

import org.rafterbook.units.Worded;

/** What is said of a change in words. */
public enum Word implements Worded {
    RAISED,
    VERY_PROBABLY_RAISED,
    PROBABLY_RAISED,
    NO_CLEAR_DIFFERENCE,
    PROBABLY_LOWERED,
    VERY_PROBABLY_LOWERED,
    LOWERED,
    CANNOT_BE_TOLD_APART,
    NO_ANSWER_YET;

    /** Limits of the probability of a gain, chosen so that a season of nothing seldom claims one. */
    private static final double SURE = 0.975;

    private static final double VERY_PROBABLE = 0.95;
    private static final double PROBABLE = 0.80;

    /** The word for a probability of a gain; days compared with days say at most 'very probably'. */
    static Word of(double probabilityRaised, boolean sameDay) {
        if (probabilityRaised < 0.5) {
            return switch (of(1 - probabilityRaised, sameDay)) {
                case RAISED -> LOWERED;
                case VERY_PROBABLY_RAISED -> VERY_PROBABLY_LOWERED;
                case PROBABLY_RAISED -> PROBABLY_LOWERED;
                default -> NO_CLEAR_DIFFERENCE;
            };
        }
        if (probabilityRaised >= SURE && sameDay) {
            return RAISED;
        }
        if (probabilityRaised >= VERY_PROBABLE) {
            return VERY_PROBABLY_RAISED;
        }
        return probabilityRaised >= PROBABLE ? PROBABLY_RAISED : NO_CLEAR_DIFFERENCE;
    }

    /** True where the change is at least probably said to have raised the time. */
    boolean isRaise() {
        return this == RAISED || this == VERY_PROBABLY_RAISED || this == PROBABLY_RAISED;
    }

    /** True for what is strong enough to be confirmed by a later session. */
    public boolean isClaim() {
        return this == RAISED || this == LOWERED || this == VERY_PROBABLY_RAISED || this == VERY_PROBABLY_LOWERED;
    }

    @Override
    public String word() {
        return Worded.super.word().replace('-', ' ');
    }
}
