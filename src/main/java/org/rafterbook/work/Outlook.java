package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Answer;
import org.rafterbook.review.ExpectedFlight;

/**
 * What the next flight may do, from the model's own flights: for preparing it, never evidence about a trim.
 *
 * @param flight how long and how high, or why that cannot be told
 * @param touching the chance to touch what is in the way tonight, or why it cannot be told
 * @param chance the chance at the planned launch torque; null where that or the chance is not known
 * @param topShare how far through its flights the model was at the top of its climb, 0 to 1; null where nobody noted it
 * @param topCount flights on which that was noted
 */
public record Outlook(
        Answer<ExpectedFlight> flight,
        Answer<TouchRisk> touching,
        @Nullable Double chance,
        @Nullable Double topShare,
        int topCount) {

    /** The expectation, null where nothing can be told. */
    public @Nullable ExpectedFlight expected() {
        return flight instanceof Answer.Known<ExpectedFlight> known ? known.value() : null;
    }

    /** The chance to touch by torque, null where it cannot be told. */
    public @Nullable TouchRisk risk() {
        return touching instanceof Answer.Known<TouchRisk> known ? known.value() : null;
    }

    /** Height of the top of the climb, m, with even chances of more and less; null where it cannot be told. */
    public ExpectedFlight.@Nullable PeakHeight peak() {
        ExpectedFlight expected = expected();
        return expected != null && expected.peak() instanceof Answer.Known<ExpectedFlight.PeakHeight> known
                ? known.value()
                : null;
    }
}
