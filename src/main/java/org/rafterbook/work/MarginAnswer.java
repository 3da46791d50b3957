package org.rafterbook.work;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Neutral point, balance and margin of one airframe with one motor, SI; what is unknown is null with the sentence that
 * says what is missing.
 *
 * @param neutralPointM neutral point aft of the origin, m
 * @param neutralPointBy what computed the neutral point
 * @param balanceM balance point aft of the origin, m
 * @param massKg all-up mass, kg
 * @param meanChordM mean aerodynamic chord of all wings, m
 * @param margin (neutral point - balance point) / mean chord
 * @param areaM2 area of all wings, m^2
 * @param aspectRatio of all wings: (longer span)^2 / area
 * @param liftSlopePerRad of the whole model on the wing area
 * @param liftShare surface to its share of the lift that a change of angle of attack brings
 * @param band half the distance between the foremost and aftmost neutral point, fraction of the mean chord
 * @param closedFormM neutral point of the closed form, m
 * @param closedFormNote why there is no closed form, or what its error is
 */
public record MarginAnswer(
        @Nullable Double neutralPointM,
        @Nullable String neutralPointBy,
        @Nullable Double balanceM,
        @Nullable Double massKg,
        @Nullable Double meanChordM,
        @Nullable Double margin,
        @Nullable Double areaM2,
        @Nullable Double aspectRatio,
        @Nullable Double liftSlopePerRad,
        Map<String, Double> liftShare,
        @Nullable Double band,
        @Nullable Double closedFormM,
        @Nullable String closedFormNote,
        @Nullable String missing) {

    /** What the closed form shown beside the answer is called. */
    public static final String CLOSED_FORM = org.rafterbook.stability.ClosedForm.NAME;

    /** Nothing known, and why. */
    static MarginAnswer unknown(String missing) {
        return new MarginAnswer(
                null, null, null, null, null, null, null, null, null, Map.of(), null, null, null, missing);
    }
}
