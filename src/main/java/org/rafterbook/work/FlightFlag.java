package org.rafterbook.work;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * The flyer's flag that a flight is to be left out.
 *
 * @param by who set it, null where not noted
 * @param at when it was set, null where not noted
 * @param beforeTime true where that was before the flight's time was known, null where nobody knows
 */
public record FlightFlag(
        String why,
        @Nullable String by,
        @Nullable Instant at,
        @Nullable Boolean beforeTime) {}
