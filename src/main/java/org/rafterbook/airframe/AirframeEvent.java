package org.rafterbook.airframe;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A crash, repair or new covering; raises the build unless the flyer says 'same as before'. */
public record AirframeEvent(
        String id,
        String modelId,
        Instant at,
        String kind,
        @Nullable String notes,
        @Nullable Integer newBuild) {}
