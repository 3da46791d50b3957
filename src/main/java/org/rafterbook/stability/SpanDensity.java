package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** How densely the panels of all surfaces together have to lie across the span, and which bends are panel edges. */
final class SpanDensity {

    /** The angle of about one panel: bends become edges where they lie so far from other places. */
    private static final double LEAST_APART = 0.09;

    private final List<SpanArc> arcs;
    private final List<SpanArc.Bend> strongestFirst = new ArrayList<>();
    private final double longest;

    SpanDensity(List<SpanLine> lines) {
        arcs = lines.stream().map(SpanArc::new).toList();
        longest = arcs.stream().mapToDouble(SpanArc::halfM).max().orElse(0);
        for (SpanArc arc : arcs) {
            strongestFirst.addAll(arc.bends());
        }
        strongestFirst.sort(Comparator.comparingDouble(SpanArc.Bend::strength).reversed());
    }

    /** Angle per metre across, of the surface that asks for the densest panels. */
    double at(double yM) {
        double densest = 1 / longest;
        for (SpanArc arc : arcs) {
            densest = Math.max(densest, arc.density(yM));
        }
        return densest;
    }

    /** The strongest change of slope of any surface's edges across a rib or the middle. */
    double sweepBend() {
        return strongestFirst.stream().mapToDouble(SpanArc.Bend::sweep).max().orElse(0);
    }

    /** Places from right to left with those bends between them that lie apart. */
    List<Double> withBends(List<Double> ends) {
        List<Double> places = new ArrayList<>(ends);
        for (SpanArc.Bend bend : strongestFirst) {
            double least = LEAST_APART / at(bend.yM());
            int next = -Collections.binarySearch(places, bend.yM()) - 1;
            boolean between = next > 0 && next < places.size();
            if (between && bend.yM() - places.get(next - 1) > least && places.get(next) - bend.yM() > least) {
                places.add(next, bend.yM());
            }
        }
        return places;
    }
}
