package org.rafterbook.rules;

import org.jspecify.annotations.Nullable;

/**
 * How a model stands to one limit of a class.
 *
 * @param value what was measured, SI; null where it is not known
 * @param limit the limit, SI
 * @param toSpare how far the value is on the right side of the limit, SI; negative where it breaks it, null where not
 *     known
 * @param sentence value, limit and difference in words
 */
public record ClassFinding(
        ClassLimit of,
        Standing standing,
        @Nullable Double value,
        double limit,
        @Nullable Double toSpare,
        String sentence) {

    /** Whether a limit is kept. */
    public enum Standing {
        KEPT,
        BROKEN,
        UNKNOWN
    }
}
