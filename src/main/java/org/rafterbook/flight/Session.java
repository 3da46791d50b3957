package org.rafterbook.flight;

import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** One visit to a venue; may pass midnight. */
public record Session(
        String id,
        @Nullable String venueId,
        LocalDate localDate,
        ZoneId zone,
        @Nullable String goal,
        @Nullable String notes) {}
