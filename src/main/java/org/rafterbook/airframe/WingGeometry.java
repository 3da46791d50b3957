package org.rafterbook.airframe;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All wings of an airframe taken together, and its tailplanes beside them; the reference for margin and coefficients.
 * Lengths in metres, areas in square metres, angles in radians.
 *
 * @param wings the surfaces with role wing, in the sheet's order
 * @param tails the surfaces with role tailplane, in the sheet's order
 * @param areaM2 area of all wings
 * @param meanChordM mean aerodynamic chord, area-weighted over all wings; 0 without wings
 * @param meanChordEdgeM its leading edge aft of the origin, area-weighted over all wings
 * @param longestSpanM span of the wing of the longest span
 */
public record WingGeometry(
        List<Surface> wings,
        List<Surface> tails,
        double areaM2,
        double meanChordM,
        double meanChordEdgeM,
        double longestSpanM) {

    public WingGeometry {
        wings = List.copyOf(wings);
        tails = List.copyOf(tails);
    }

    /** The wings and tailplanes of an airframe. */
    public static WingGeometry of(Airframe airframe) {
        List<Surface> wings = new ArrayList<>();
        List<Surface> tails = new ArrayList<>();
        for (Surface surface : airframe.surfaces()) {
            if (surface.role() == Role.WING) {
                wings.add(surface);
            } else if (surface.role() == Role.TAILPLANE) {
                tails.add(surface);
            }
        }
        double area = 0;
        double chord = 0;
        double edge = 0;
        double span = 0;
        for (Surface wing : wings) {
            Planform plan = Planform.of(wing);
            area += plan.areaM2();
            chord += plan.areaM2() * plan.meanChordM();
            edge += plan.areaM2() * plan.meanChordEdgeM();
            span = Math.max(span, plan.spanM());
        }
        return area > 0
                ? new WingGeometry(wings, tails, area, chord / area, edge / area, span)
                : new WingGeometry(wings, tails, 0, 0, 0, span);
    }

    /**
     * Aspect ratio: of one wing span squared over area; of two or more the longest span squared over the total area
     * (NACA's convention for biplanes). 0 without wings.
     */
    public double aspectRatio() {
        return areaM2 > 0 ? longestSpanM * longestSpanM / areaM2 : 0;
    }

    /** Quarter point of the mean aerodynamic chord aft of the origin, m. */
    public double quarterChordM() {
        return meanChordEdgeM + meanChordM / 4;
    }

    /** Area of all tailplanes, m2. */
    public double tailAreaM2() {
        return tails.stream().mapToDouble(tail -> Planform.of(tail).areaM2()).sum();
    }

    /**
     * Distance from the wings' aerodynamic centre (taken at the quarter point of their mean chord) to that of the
     * tailplanes, positive aft, m; null without wings or tailplanes.
     */
    public @Nullable Double tailArmM() {
        double tailArea = tailAreaM2();
        if (!(areaM2 > 0) || !(tailArea > 0)) {
            return null;
        }
        double moment = 0;
        for (Surface tail : tails) {
            Planform plan = Planform.of(tail);
            moment += plan.areaM2() * plan.quarterChordM();
        }
        return moment / tailArea - quarterChordM();
    }

    /**
     * Tail volume: tail area times the arm of {@link #tailArmM} over wing area times mean chord, with the arm from the
     * wings' aerodynamic centre, not from the balance point; null without wings or tailplanes.
     */
    public @Nullable Double tailVolume() {
        Double arm = tailArmM();
        return arm == null ? null : tailAreaM2() * arm / (areaM2 * meanChordM);
    }

    /** The higher of two wings; null unless there are two. */
    public @Nullable Surface upperWing() {
        if (wings.size() != 2) {
            return null;
        }
        return wings.get(1).riseM() >= wings.get(0).riseM() ? wings.get(1) : wings.get(0);
    }

    /** The lower of two wings; null unless there are two. */
    public @Nullable Surface lowerWing() {
        Surface upper = upperWing();
        return upper == null ? null : upper == wings.get(0) ? wings.get(1) : wings.get(0);
    }

    /** Vertical distance between the root leading edges of two wings, m; null unless there are two. */
    public @Nullable Double gapM() {
        Surface upper = upperWing();
        Surface lower = lowerWing();
        return upper == null || lower == null ? null : upper.riseM() - lower.riseM();
    }

    /** How far the upper wing's root leading edge lies ahead of the lower's, m; null unless there are two wings. */
    public @Nullable Double staggerM() {
        Surface upper = upperWing();
        Surface lower = lowerWing();
        return upper == null || lower == null ? null : lower.edgeAftM() - upper.edgeAftM();
    }

    /** Incidence of a wing less that of the first tailplane, rad; null without a tailplane. */
    public @Nullable Double decalageRad(Surface wing) {
        return tails.isEmpty() ? null : wing.incidenceRad() - tails.get(0).incidenceRad();
    }
}
