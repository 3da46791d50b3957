package org.rafterbook.work;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.stability.ClosedForm;
import org.rafterbook.stability.MarginDifference;
import org.rafterbook.stability.StabilityAnswer;

/**
 * Neutral point, balance and margin of one airframe with one motor, SI; what is unknown is null with the sentence that
 * says what is missing.
 *
 * @param neutralPointM neutral point aft of the origin, m
 * @param balanceM balance point aft of the origin, m
 * @param massKg all-up mass, kg
 * @param meanChordM mean aerodynamic chord of all wings, m
 * @param margin (neutral point - balance point) / mean chord
 * @param areaM2 area of all wings, m^2
 * @param aspectRatio of all wings: (longer span)^2 / area
 * @param liftSlopePerRad of the whole model on the wing area
 * @param liftShare surface to its share of the lift that a change of angle of attack brings
 * @param band half the distance between the foremost and aftmost neutral point, fraction of the mean chord; where a zero
 *     is known, half the range of the distance to its neutral point
 * @param stability what the lattice said of the shape, before the flyer's zero; null where the geometry is unknown
 * @param closedFormM neutral point of the closed form, m
 * @param closedFormNote why there is no closed form, or what its error is
 * @param zero the neutral point known from flying that is counted from; null where there is none
 */
public record MarginAnswer(
        @Nullable Double neutralPointM,
        @Nullable Double balanceM,
        @Nullable Double massKg,
        @Nullable Double meanChordM,
        @Nullable Double margin,
        @Nullable Double areaM2,
        @Nullable Double aspectRatio,
        @Nullable Double liftSlopePerRad,
        Map<String, Double> liftShare,
        @Nullable Double band,
        @Nullable StabilityAnswer stability,
        @Nullable Double closedFormM,
        @Nullable String closedFormNote,
        @Nullable KnownZero zero,
        @Nullable String missing) {

    /** What the closed form shown beside the answer is called. */
    public static final String CLOSED_FORM = ClosedForm.NAME;

    /** What computes the neutral point. */
    public static final String LATTICE = "vortex lattice";

    /** Nothing known, and why. */
    static MarginAnswer unknown(String missing) {
        return new MarginAnswer(
                null, null, null, null, null, null, null, null, Map.of(), null, null, null, null, null, missing);
    }

    /** This margin less another of the same model, with the band of the difference itself; null where one is unknown. */
    public @Nullable MarginDifference differenceFrom(MarginAnswer other) {
        StabilityAnswer mine = stability;
        StabilityAnswer theirs = other.stability;
        return mine == null || theirs == null ? null : MarginDifference.between(mine, balanceM, theirs, other.balanceM);
    }

    /** What of the surfaces is unusual or lacking and hides nothing, sentence by sentence. */
    public List<String> remarks() {
        return stability == null
                ? List.of()
                : stability.problems().stream()
                        .filter(p -> !p.kind().hidesNeutralPoint())
                        .map(p -> p.sentence() + " " + p.stillShown())
                        .toList();
    }

    /** The closed form's neutral point less the one shown, m; null where one is unknown. */
    public @Nullable Double closedFormDifferenceM() {
        return closedFormM == null || neutralPointM == null ? null : (Double) (closedFormM - neutralPointM);
    }
}
