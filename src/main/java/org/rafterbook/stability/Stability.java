package org.rafterbook.stability;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeProblem;
import org.rafterbook.airframe.AirframeProblems;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.WingGeometry;

/** The front door of the stability engine. Thread-safe, without state; a solve takes milliseconds. */
public final class Stability {

    /** Changes whenever the same airframe may get another answer: kept answers of older engines are computed anew. */
    public static final String ENGINE_VERSION = "lattice-3";

    private Stability() {}

    /** Neutral point, slope, shares and band of an airframe at the settings of every margin shown. */
    public static StabilityAnswer analyse(Airframe airframe) {
        return analyse(airframe, LatticeSettings.DEFAULT);
    }

    /** Neutral point, slope, shares and band of an airframe. */
    public static StabilityAnswer analyse(Airframe airframe, LatticeSettings settings) {
        List<AirframeProblem> problems = AirframeProblems.ofGeometry(airframe);
        return answer(airframe, solve(airframe, problems, settings), problems);
    }

    /** The solved flow, kept to be trimmed again and again; empty where a problem of the geometry hides it. */
    public static Optional<GeometrySolution> solve(Airframe airframe) {
        List<AirframeProblem> problems = AirframeProblems.ofGeometry(airframe);
        return Optional.ofNullable(solve(airframe, problems, LatticeSettings.DEFAULT));
    }

    /** The answer of a solution that {@link GeometrySolution#fits fits} the airframe. */
    public static StabilityAnswer answer(Airframe airframe, GeometrySolution solution) {
        return answer(airframe, solution, AirframeProblems.ofGeometry(airframe));
    }

    /** What a neutral point depends on: the lifting surfaces without incidence, twist and camber; no masses, no fins. */
    public static Airframe shape(Airframe airframe) {
        return new Airframe(GeometrySolution.shape(airframe), List.of(), null, null);
    }

    private static @Nullable GeometrySolution solve(
            Airframe airframe, List<AirframeProblem> problems, LatticeSettings settings) {
        boolean hidden = problems.stream().anyMatch(p -> p.kind().hidesNeutralPoint());
        return hidden ? null : GeometrySolution.of(airframe, settings);
    }

    private static StabilityAnswer answer(
            Airframe airframe, @Nullable GeometrySolution solution, List<AirframeProblem> problems) {
        if (solution == null) {
            return hidden(airframe, problems);
        }
        WingGeometry wings = solution.wings();
        Map<Perturbation, Double> perturbed = new EnumMap<>(Perturbation.class);
        MarginDifference.Range range = new MarginDifference.Range();
        range.add(solution.neutralPointM());
        for (Perturbation perturbation : Perturbation.values()) {
            double moved = perturbation.neutralPointM(solution);
            perturbed.put(perturbation, moved);
            range.add(moved);
        }
        Map<String, Double> downwash = new LinkedHashMap<>();
        for (int s = 0; s < solution.surfaces().size(); s++) {
            if (solution.surfaces().get(s).role() == Role.TAILPLANE) {
                downwash.put(solution.surfaces().get(s).name(), solution.downwashGradient(s));
            }
        }
        return new StabilityAnswer(
                solution.neutralPointM(),
                wings.meanChordM(),
                wings.meanChordEdgeM(),
                wings.areaM2(),
                wings.aspectRatio(),
                solution.liftSlopePerRad(),
                solution.liftShare(),
                downwash,
                100 * range.half() / wings.meanChordM(),
                perturbed,
                ClosedForm.of(airframe),
                problems,
                null);
    }

    /** Areas and chords are still shown where they are sound numbers. */
    private static StabilityAnswer hidden(Airframe airframe, List<AirframeProblem> problems) {
        WingGeometry wings = WingGeometry.of(airframe);
        boolean known = wings.areaM2() > 0 && Double.isFinite(wings.meanChordM() + wings.meanChordEdgeM());
        String missing = problems.stream()
                .filter(p -> p.kind().hidesNeutralPoint())
                .map(AirframeProblem::sentence)
                .findFirst()
                .orElse("There is no neutral point.");
        return new StabilityAnswer(
                null,
                known ? wings.meanChordM() : null,
                known ? wings.meanChordEdgeM() : null,
                known ? wings.areaM2() : null,
                known ? wings.aspectRatio() : null,
                null,
                Map.of(),
                Map.of(),
                null,
                Map.of(),
                new ClosedForm.Answer(null, null, missing, null),
                problems,
                missing);
    }
}
