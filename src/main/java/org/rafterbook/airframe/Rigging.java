package org.rafterbook.airframe;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * An occasion on which a model was set to a version. A-B-A is three riggings, two versions.
 *
 * @param ordinal order within the model, from 1
 * @param previousId rigging before it, null for the first
 */
public record Rigging(
        String id,
        String modelId,
        int ordinal,
        String versionId,
        @Nullable String previousId,
        @Nullable Instant setAt,
        @Nullable String reason,
        @Nullable String trialId) {}
