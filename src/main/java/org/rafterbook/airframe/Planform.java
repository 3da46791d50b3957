package org.rafterbook.airframe;

import java.util.List;

/**
 * Area, mean chords and the like of one surface; ribs are joined by straight lines, so all integrals are exact. Places
 * are in the axes of the airframe, lengths in metres. Incidence and twist do not enter.
 *
 * @param areaM2 area seen square to the untilted surface, both halves
 * @param spanM tip to tip before tilt
 * @param meanChordM mean aerodynamic chord, integral of c squared over the area
 * @param meanChordEdgeM leading edge of the mean aerodynamic chord, area-weighted
 * @param geometricChordM mean geometric chord, area over span
 * @param semiperimeterM half of the outline's length seen from above
 * @param heightM area-weighted height
 * @param leftM area-weighted place to the left of the stick; 0 for a symmetric surface
 */
public record Planform(
        double areaM2,
        double spanM,
        double meanChordM,
        double meanChordEdgeM,
        double geometricChordM,
        double semiperimeterM,
        double heightM,
        double leftM) {

    /**
     * The planform of a surface without {@link AirframeProblems problems of its own}; one of no area gives zeros, never
     * NaN.
     */
    public static Planform of(Surface surface) {
        Sums right = Sums.of(surface.ribs());
        Sums left = Sums.of(surface.leftRibs());
        double area = right.area + left.area;
        double span = right.out + left.out;
        if (!(area > 0) || !(span > 0)) {
            return new Planform(0, Math.max(span, 0), 0, surface.edgeAftM(), 0, 0, surface.riseM(), 0);
        }
        // A tilt about the stick raises the left half by out sin(tilt) and lowers the right half.
        double sideways = (left.outMoment - right.outMoment) / area;
        double up = (left.riseMoment + right.riseMoment) / area;
        double cos = Math.cos(surface.tiltRad());
        double sin = Math.sin(surface.tiltRad());
        return new Planform(
                area,
                span,
                (right.square + left.square) / area,
                surface.edgeAftM() + (right.edgeMoment + left.edgeMoment) / area,
                area / span,
                (right.outline + left.outline) / 2,
                surface.riseM() + up * cos + sideways * sin,
                surface.offsetLeftM() + sideways * cos - up * sin);
    }

    /** Aspect ratio of this surface alone, span squared over area; 0 for no area. */
    public double aspectRatio() {
        return areaM2 > 0 ? spanM * spanM / areaM2 : 0;
    }

    /** Quarter point of the mean aerodynamic chord aft of the origin, m. */
    public double quarterChordM() {
        return meanChordEdgeM + meanChordM / 4;
    }

    /** Semiperimeter over span (1 + chord/span for a rectangle); 0 for no span. */
    public double semiperimeterPerSpan() {
        return spanM > 0 ? semiperimeterM / spanM : 0;
    }

    /** Integrals over one half, ribs from the middle outward. */
    private static final class Sums {
        private double area;
        private double square;
        private double edgeMoment;
        private double riseMoment;
        private double outMoment;
        private double outline;
        private double out;

        static Sums of(List<Rib> ribs) {
            Sums sums = new Sums();
            for (int i = 1; i < ribs.size(); i++) {
                sums.add(ribs.get(i - 1), ribs.get(i));
            }
            if (!ribs.isEmpty()) {
                Rib first = ribs.get(0);
                Rib last = ribs.get(ribs.size() - 1);
                sums.out = last.outM();
                sums.outline += last.chordM() + (first.outM() > 0 ? first.chordM() : 0);
            }
            return sums;
        }

        private void add(Rib a, Rib b) {
            double width = b.outM() - a.outM();
            double c1 = a.chordM();
            double c2 = b.chordM();
            area += width * (c1 + c2) / 2;
            square += width * (c1 * c1 + c1 * c2 + c2 * c2) / 3;
            edgeMoment += moment(width, c1, c2, a.edgeAftM(), b.edgeAftM());
            riseMoment += moment(width, c1, c2, a.riseM(), b.riseM());
            outMoment += moment(width, c1, c2, a.outM(), b.outM());
            outline += Math.hypot(width, b.edgeAftM() - a.edgeAftM())
                    + Math.hypot(width, b.edgeAftM() + c2 - a.edgeAftM() - c1);
        }

        /** Integral of chord times a quantity, both linear across the width. */
        private static double moment(double width, double c1, double c2, double q1, double q2) {
            return width * (q1 * (2 * c1 + c2) + q2 * (c1 + 2 * c2)) / 6;
        }
    }
}
