package org.rafterbook.stability;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.AirframeProblem;

/**
 * What is known of an airframe's stability before it has a balance point. What is unknown is null, and {@code missing} says
 * why. Lengths in metres aft of the origin.
 *
 * @param neutralPointM neutral point of the lattice
 * @param meanChordM mean aerodynamic chord, area-weighted over all wings
 * @param meanChordEdgeM its leading edge
 * @param wingAreaM2 area of all wings
 * @param aspectRatio of all wings, longest span squared over area
 * @param liftSlopePerRad of the whole model on the wing area
 * @param liftShare share of each surface in the lift of an angle of attack, in the sheet's order
 * @param downwash mean downwash gradient at each tailplane
 * @param bandPercent half the distance between the foremost and the aftmost neutral point, per cent of the mean chord
 * @param perturbedNeutralPointM neutral point with each perturbation
 * @param closedForm the closed form beside it, or its reason
 * @param problems what is wrong or missing with the geometry
 * @param missing why there is no neutral point; null where there is one
 */
public record StabilityAnswer(
        @Nullable Double neutralPointM,
        @Nullable Double meanChordM,
        @Nullable Double meanChordEdgeM,
        @Nullable Double wingAreaM2,
        @Nullable Double aspectRatio,
        @Nullable Double liftSlopePerRad,
        Map<String, Double> liftShare,
        Map<String, Double> downwash,
        @Nullable Double bandPercent,
        Map<Perturbation, Double> perturbedNeutralPointM,
        ClosedForm.Answer closedForm,
        List<AirframeProblem> problems,
        @Nullable String missing) {

    public StabilityAnswer {
        liftShare = Collections.unmodifiableMap(new LinkedHashMap<>(liftShare));
        downwash = Collections.unmodifiableMap(new LinkedHashMap<>(downwash));
        perturbedNeutralPointM = Collections.unmodifiableMap(new LinkedHashMap<>(perturbedNeutralPointM));
        problems = List.copyOf(problems);
    }

    /** Stability margin for a balance point, as a fraction of the mean chord; null where one of them is unknown. */
    public @Nullable Double margin(@Nullable Double balanceM) {
        Double neutral = neutralPointM;
        Double chord = meanChordM;
        return neutral == null || chord == null || balanceM == null ? null : (neutral - balanceM) / chord;
    }
}
