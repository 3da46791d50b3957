package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Surface;
import org.rafterbook.ui.chart.Scale;

/** A surface as a closed line on the drawing, from above. From above, nose left, the flyer's left is below. */
final class Outline {

    private final Scale x;
    private final double middlePx;

    Outline(Scale x, double middlePx) {
        this.x = x;
        this.middlePx = middlePx;
    }

    double x(double aftM) {
        return x.at(aftM * 1000);
    }

    /** Pixel of a place across the span, out to the right positive. */
    double y(Surface surface, double outM, boolean right) {
        double leftM = (right ? -outM : outM) + surface.offsetLeftM();
        return middlePx + leftM * 1000 * x.pxPerUnit();
    }

    /** The corners, x and y in turn. */
    double[] of(Surface s) {
        List<double[]> corners = new ArrayList<>();
        List<Rib> right = s.ribs();
        List<Rib> left = s.leftRibs();
        for (int i = left.size() - 1; i >= 0; i--) {
            corners.add(corner(s, left.get(i), false, false));
        }
        right.forEach(rib -> corners.add(corner(s, rib, true, false)));
        for (int i = right.size() - 1; i >= 0; i--) {
            corners.add(corner(s, right.get(i), true, true));
        }
        left.forEach(rib -> corners.add(corner(s, rib, false, true)));
        double[] xy = new double[2 * corners.size()];
        for (int i = 0; i < corners.size(); i++) {
            xy[2 * i] = corners.get(i)[0];
            xy[2 * i + 1] = corners.get(i)[1];
        }
        return xy;
    }

    private double[] corner(Surface s, Rib rib, boolean right, boolean trailing) {
        double aft = s.edgeAftM() + rib.edgeAftM() + (trailing ? rib.chordM() : 0);
        return new double[] {x(aft), y(s, rib.outM(), right)};
    }
}
