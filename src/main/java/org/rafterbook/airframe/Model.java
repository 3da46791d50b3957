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
        @Nullable String notes) {

    /** The same model with another build number. */
    public Model rebuilt(int newBuild) {
        return new Model(id, name, letter, newBuild, wishedLow, wishedHigh, classSheetId, notes);
    }

    /** The same model flying in a class; null for none. */
    public Model inClass(@Nullable String sheetId) {
        return new Model(id, name, letter, build, wishedLow, wishedHigh, sheetId, notes);
    }

    /** The same model with another wished margin; both null for none. */
    public Model wishing(@Nullable Double low, @Nullable Double high) {
        return new Model(id, name, letter, build, low, high, classSheetId, notes);
    }
}
