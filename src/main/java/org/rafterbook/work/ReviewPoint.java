package org.rafterbook.work;

import java.time.Instant;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Outcome;
import org.rafterbook.review.ReviewFlight;

/**
 * One flight of a review with what a screen says about it.
 *
 * @param flight as the estimates take it; its notes hold those of its events too
 * @param version name of the version it flew on, such as v13
 * @param versionNumber counts the model's versions from 1
 * @param launchedAt null where only the day is known
 * @param waiting true while its trial is open: it enters no estimate until that is judged
 * @param flag set where the flyer wants it left out, null otherwise
 */
public record ReviewPoint(
        ReviewFlight flight,
        String version,
        int versionNumber,
        @Nullable Instant launchedAt,
        ZoneId zone,
        boolean waiting,
        @Nullable FlightFlag flag) {

    /** True where it has a time that can be drawn. */
    public boolean timed() {
        return flight.durationS() > 0;
    }

    /** True where its time counts as "at least this long". */
    public boolean atLeast() {
        return flight.outcome().kind() == Outcome.Kind.AT_LEAST;
    }

    /** True where it enters what is compared. */
    public boolean counts() {
        return !waiting && flight.counts();
    }
}
