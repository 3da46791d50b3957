package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeEdits;
import org.rafterbook.airframe.AirframeProblems;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;

/** What the gap between two wings buys for one model, computed gap by gap. */
public final class GapStudy {

    /** Shown wherever a gap is given in chords. */
    public static final String CONVENTION = "At least one chord apart is a convention: nothing special happens there.";

    private GapStudy() {}

    /**
     * The model with one gap.
     *
     * @param gapM vertical distance of the root leading edges, m
     * @param gapInChords over the mean chord
     * @param neutralPointM aft of the origin, m
     * @param liftSlopePerRad whole model on the wing area
     * @param slopeKept lift slope of each wing in the model over that of the same wing alone
     * @param inducedDrag induced drag at equal lift over that of the gap as it is
     */
    public record Row(
            double gapM,
            double gapInChords,
            double neutralPointM,
            double liftSlopePerRad,
            Map<String, Double> slopeKept,
            double inducedDrag) {}

    /** One row for each gap in chords that can be computed; empty unless there are two wings. */
    public static List<Row> of(Airframe airframe, double... gapsInChords) {
        WingGeometry wings = WingGeometry.of(airframe);
        Surface upper = wings.upperWing();
        Surface lower = wings.lowerWing();
        List<Row> rows = new ArrayList<>();
        if (upper == null || lower == null || hidden(airframe)) {
            return rows;
        }
        Map<String, Double> alone = slopesAlone(airframe);
        double present = dragFactor(GeometrySolution.of(airframe, LatticeSettings.DEFAULT));
        for (double chords : gapsInChords) {
            double gap = chords * wings.meanChordM();
            Airframe raised = AirframeEdits.moved(airframe, upper.name(), upper.edgeAftM(), lower.riseM() + gap);
            if (!hidden(raised)) {
                GeometrySolution solution = GeometrySolution.of(raised, LatticeSettings.DEFAULT);
                rows.add(new Row(
                        gap,
                        chords,
                        solution.neutralPointM(),
                        solution.liftSlopePerRad(),
                        slopeKept(solution, alone),
                        dragFactor(solution) / present));
            }
        }
        return rows;
    }

    private static boolean hidden(Airframe airframe) {
        return AirframeProblems.ofGeometry(airframe).stream()
                .anyMatch(p -> p.kind().hidesNeutralPoint());
    }

    /** Induced drag over lift squared. */
    static double dragFactor(GeometrySolution solution) {
        double lift = solution.alpha().totalLift();
        return solution.inducedDrag(solution.alpha()) / (lift * lift);
    }

    /** Lift of each wing per radian when nothing else is there. */
    static Map<String, Double> slopesAlone(Airframe airframe) {
        Map<String, Double> alone = new LinkedHashMap<>();
        for (Surface s : airframe.surfaces()) {
            if (s.role() == Role.WING) {
                Airframe single = new Airframe(List.of(s), List.of(), null, null);
                alone.put(
                        s.name(),
                        GeometrySolution.of(single, LatticeSettings.DEFAULT)
                                .alpha()
                                .totalLift());
            }
        }
        return alone;
    }

    /** Lift slope of each wing among the others over that alone. */
    static Map<String, Double> slopeKept(GeometrySolution solution, Map<String, Double> alone) {
        Map<String, Double> kept = new LinkedHashMap<>();
        for (int s = 0; s < solution.surfaces().size(); s++) {
            String name = solution.surfaces().get(s).name();
            Double single = alone.get(name);
            if (single != null) {
                kept.put(name, solution.alpha().lift()[s] / single);
            }
        }
        return kept;
    }
}
