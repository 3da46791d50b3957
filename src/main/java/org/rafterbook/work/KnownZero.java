package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Version;
import org.rafterbook.logbook.Reader;
import org.rafterbook.stability.MarginDifference;
import org.rafterbook.stability.StabilityAnswer;

/**
 * A neutral point known from flying, from which those of all versions of the model are counted.
 *
 * @param shiftM what the computed neutral point is moved by, aft positive, m
 * @param reason how it is known, as the flyer typed it
 * @param version name of the version that flew it, such as t3
 * @param shape what was computed of that version; null where it has no geometry any more
 */
public record KnownZero(
        double shiftM,
        String reason,
        String version,
        @Nullable StabilityAnswer shape) {

    /** The zero set on a version; null where none is. */
    static @Nullable KnownZero of(Reader reader, Version version, @Nullable StabilityAnswer shape) {
        Double shift = version.zeroShiftM();
        return shift == null
                ? null
                : new KnownZero(
                        shift,
                        version.zeroShiftReason() == null ? "" : version.zeroShiftReason(),
                        reader.get(Model.class, version.modelId()).letter() + version.number(),
                        shape);
    }

    /**
     * What is still unknown of another version's neutral point: how differently the perturbations move the two.
     *
     * @return fraction of the mean chord; null where it cannot be told
     */
    @Nullable
    Double bandOf(StabilityAnswer other) {
        MarginDifference apart = shape == null ? null : MarginDifference.between(other, 0.0, shape, 0.0);
        return apart == null ? null : (Double) apart.bandPoints();
    }
}
