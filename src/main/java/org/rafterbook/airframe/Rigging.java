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
        @Nullable String trialId) {

    /** The same occasion with another version. */
    public Rigging withVersion(String version) {
        return new Rigging(id, modelId, ordinal, version, previousId, setAt, reason, trialId);
    }

    /** The same occasion at another place in the strip. */
    public Rigging withPlace(int newOrdinal, @Nullable String newPrevious) {
        return new Rigging(id, modelId, newOrdinal, versionId, newPrevious, setAt, reason, trialId);
    }
}
