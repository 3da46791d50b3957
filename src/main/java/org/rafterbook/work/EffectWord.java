package org.rafterbook.work;

import org.jspecify.annotations.Nullable;

/** What may be said of an effect, by the probability that it raised duration. */
public enum EffectWord {
    RAISED("raised"),
    VERY_PROBABLY_RAISED("very probably raised"),
    PROBABLY_RAISED("probably raised"),
    NO_CLEAR_DIFFERENCE("no clear difference"),
    PROBABLY_LOWERED("probably lowered"),
    VERY_PROBABLY_LOWERED("very probably lowered"),
    LOWERED("lowered"),
    CANNOT_BE_TOLD_APART("cannot be told apart"),
    NO_ANSWER_YET("no answer yet");

    private static final double SURE = 0.975;
    private static final double VERY = 0.95;
    private static final double PROBABLY = 0.80;

    private final String word;

    EffectWord(String word) {
        this.word = word;
    }

    /** The word for a probability; {@link #NO_ANSWER_YET} where it is not known. */
    public static EffectWord of(@Nullable Double probabilityRaised) {
        if (probabilityRaised == null) {
            return NO_ANSWER_YET;
        }
        double p = probabilityRaised;
        if (p >= PROBABLY) {
            return p >= SURE ? RAISED : p >= VERY ? VERY_PROBABLY_RAISED : PROBABLY_RAISED;
        }
        if (p <= 1 - PROBABLY) {
            return p <= 1 - SURE ? LOWERED : p <= 1 - VERY ? VERY_PROBABLY_LOWERED : PROBABLY_LOWERED;
        }
        return NO_CLEAR_DIFFERENCE;
    }

    public String word() {
        return word;
    }

    /** True for the words of raised. */
    public boolean up() {
        return ordinal() <= PROBABLY_RAISED.ordinal();
    }

    /** True for the words of lowered. */
    public boolean down() {
        return this == PROBABLY_LOWERED || this == VERY_PROBABLY_LOWERED || this == LOWERED;
    }

    /** True from "very probably" on, which is when colour may be used. */
    public boolean firm() {
        return this == RAISED || this == VERY_PROBABLY_RAISED || this == VERY_PROBABLY_LOWERED || this == LOWERED;
    }
}
