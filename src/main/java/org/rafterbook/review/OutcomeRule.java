package org.rafterbook.review;

import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;

/**
 * How a flight's time is taken, decided by what was recorded about it and never by the time itself.
 *
 * @param durationS recorded time, s; null where the flight has none
 * @param ending how it ended; null counts as clean
 * @param cutShort what the flyer said at landing; null means no for clean and aborted, cannot say for the others
 * @param firstSteerS second of the first steer, null where there was none or nobody noted it
 * @param flag why the flyer flagged it to be left out, null where it is not flagged
 * @param flaggedBeforeTime true where the flag was set before the time was known, null where nobody knows
 * @param lateFlagsCount true where the flyer wants flags of after the time, or of an unknown moment, to count
 */
public record OutcomeRule(
        @Nullable Double durationS,
        @Nullable Ending ending,
        @Nullable CutShort cutShort,
        @Nullable Double firstSteerS,
        @Nullable String flag,
        @Nullable Boolean flaggedBeforeTime,
        boolean lateFlagsCount) {

    /** The rule for a flight nobody flagged or steered. */
    public static OutcomeRule of(double durationS, @Nullable Ending ending, @Nullable CutShort cutShort) {
        return new OutcomeRule(durationS, ending, cutShort, null, null, null, false);
    }

    /** How the time is taken, with the sentence that says why where it is not simply the time. */
    public Outcome outcome() {
        Ending how = ending == null ? Ending.CLEAN : ending;
        if (durationS == null || !(durationS > 0) || durationS.isInfinite()) {
            return new Outcome(Outcome.Kind.LEFT_OUT, 0, how, "no time was recorded");
        }
        double time = durationS;
        String why = flag == null && how == Ending.ABORTED ? how.word() : flag;
        if (flag != null && Boolean.TRUE.equals(flaggedBeforeTime)) {
            return new Outcome(Outcome.Kind.LEFT_OUT, time, how, flag + ": flagged before its time was known");
        }
        if (why != null && lateFlagsCount) {
            return new Outcome(
                    Outcome.Kind.LEFT_OUT, time, how, why + ": left out by the flyer although flagged " + late(), true);
        }
        Outcome flown = flown(how, time);
        if (why == null) {
            return flown;
        }
        String counts = why + ": flagged " + late() + ", so it counts as flown";
        return new Outcome(
                flown.kind(), flown.countsS(), how, flown.reason() == null ? counts : flown.reason() + "; " + counts);
    }

    private String late() {
        return flaggedBeforeTime == null ? "at an unknown moment" : "after its time was known";
    }

    private Outcome flown(Ending how, double time) {
        if (firstSteerS != null && firstSteerS > 0) {
            double counts = Math.min(firstSteerS, time);
            return new Outcome(Outcome.Kind.AT_LEAST, counts, how, "steered: at least the time of its first steer");
        }
        if (how == Ending.STEERED) {
            return new Outcome(Outcome.Kind.LEFT_OUT, time, how, "steered, nobody noted when");
        }
        return switch (cutShort == null ? unsaid(how) : cutShort) {
            case NO -> new Outcome(Outcome.Kind.EXACT, time, how, null);
            case YES -> new Outcome(Outcome.Kind.AT_LEAST, time, how, words(how) + "cut short");
            case CANNOT_SAY ->
                new Outcome(Outcome.Kind.AT_LEAST, time, how, words(how) + "cannot say whether it was cut short");
        };
    }

    private static CutShort unsaid(Ending how) {
        return switch (how) {
            case CLEAN, ABORTED -> CutShort.NO;
            case TOUCHED, STEERED, MID_AIR, HUNG -> CutShort.CANNOT_SAY;
        };
    }

    private static String words(Ending how) {
        return how == Ending.CLEAN ? "" : how.word() + ", ";
    }
}
