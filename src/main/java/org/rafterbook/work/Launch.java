package org.rafterbook.work;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Logbook;

/**
 * What is known of a flight when it is let go.
 *
 * @param flightId the id its row will have, so that it can be spoken of before it is on disk
 * @param modelId null to just time a flight; its model is given later
 * @param windId wind on its motor, null where none was logged; one that has flown already makes it a relaunch
 * @param at launch instant, null where only the time aloft is known
 * @param leftOutWhy why it is to be left out, flagged before its time is known; null for a flight that counts
 */
public record Launch(
        String flightId,
        @Nullable String modelId,
        @Nullable String windId,
        @Nullable Instant at,
        @Nullable String leftOutWhy) {

    /** A launch with an id of its own. */
    public static Launch of(@Nullable String modelId, @Nullable String windId, @Nullable Instant at) {
        return new Launch(Logbook.newId(), modelId, windId, at, null);
    }

    /** The same flight, flagged before its time is known. */
    public Launch leftOut(@Nullable String why) {
        return new Launch(flightId, modelId, windId, at, why);
    }
}
