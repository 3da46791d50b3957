package org.rafterbook.review;

import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Ending;

/**
 * How one flight's time is taken into the estimates.
 *
 * @param kind exact, a lower bound, or not at all
 * @param countsS the time that counts, s: the recorded one, or that of the first steer; as recorded where left out
 * @param ending how the flight ended
 * @param reason why it is a lower bound or left out, or what was marked and yet counts; null where nothing is to say
 * @param takenOut true where the flyer left it out although it was flagged after its time was known, or nobody knows when
 */
public record Outcome(
        Kind kind, double countsS, Ending ending, @Nullable String reason, boolean takenOut) {

    /** An outcome the flyer did not change. */
    public Outcome(Kind kind, double countsS, Ending ending, @Nullable String reason) {
        this(kind, countsS, ending, reason, false);
    }

    /** What the recorded time says about the time the model had in it. */
    public enum Kind {
        /** The time itself. */
        EXACT,
        /** The model would have flown at least this long. */
        AT_LEAST,
        /** Says nothing about the model. */
        LEFT_OUT
    }

    /** A flight that ended by itself. */
    public static Outcome exact(double durationS) {
        return new Outcome(Kind.EXACT, durationS, Ending.CLEAN, null);
    }

    /** A flight that a touch cut short after {@code durationS} seconds. */
    public static Outcome atLeast(double durationS, String reason) {
        return new Outcome(Kind.AT_LEAST, durationS, Ending.TOUCHED, reason);
    }

    /** A flight that says nothing about the model. */
    public static Outcome leftOut(double durationS, String reason) {
        return new Outcome(Kind.LEFT_OUT, durationS, Ending.ABORTED, reason);
    }
}
