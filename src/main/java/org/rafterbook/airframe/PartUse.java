package org.rafterbook.airframe;

import org.jspecify.annotations.Nullable;

/** One model's use of a part: where its centre lies, m from the origin. */
public record PartUse(
        String id,
        String modelId,
        String partId,
        @Nullable Double aftM,
        @Nullable Double riseM) {}
