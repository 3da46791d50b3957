package org.rafterbook.airframe;

import org.jspecify.annotations.Nullable;

/**
 * A named aeroplane.
 *
 * @param letter lower-case letter its versions are numbered with ("v" gives v1, v2)
 * @param build build number; rises when the model is crashed, repaired or re-covered
 * @param wishedLow lower end of the wished margin, fraction of the mean chord
 * @param wishedHigh upper end of the wished margin, fraction of the mean chord
 */
public record Model(
        String id,
        String name,
        String letter,
        int build,
        @Nullable Double wishedLow,
        @Nullable Double wishedHigh,
        @Nullable String classSheetId,
        @Nullable String notes) {}
