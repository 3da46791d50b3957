package org.rafterbook.review;

import org.jspecify.annotations.Nullable;

/**
 * How the model behaved on one flight.
 *
 * @param recovery whether it recovered from an upset, null where nobody noted it
 * @param stalls number of stalls, null where not counted
 * @param steers number of steers, null where not counted
 */
public record Handling(
        @Nullable Recovery recovery,
        @Nullable Integer stalls,
        @Nullable Integer steers) {

    /** What came of an upset. */
    public enum Recovery {
        YES,
        NO,
        NOT_TRIED
    }

    /** Nothing was noted. */
    public static final Handling UNKNOWN = new Handling(null, null, null);
}
