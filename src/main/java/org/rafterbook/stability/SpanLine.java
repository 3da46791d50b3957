package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.List;
import org.rafterbook.airframe.HalfLine;
import org.rafterbook.airframe.Surface;

/**
 * An unbroken piece of a surface from right to left: the whole of it, or one half where the halves do not meet or only
 * the left half is modelled.
 *
 * @param surface index of the surface
 * @param inner the half read up to {@code splitM}
 * @param outer the half read beyond {@code splitM}; the same as {@code inner} for a single half
 * @param fromM rightmost place across, m
 * @param toM leftmost place across, m
 * @param fromIsTip true where the piece ends at {@code fromM}; false where it goes on in its mirror image
 */
record SpanLine(
        int surface, HalfLine inner, HalfLine outer, double splitM, double fromM, double toM, boolean fromIsTip) {

    /** The left half of a symmetric surface. */
    static SpanLine half(int index, Surface surface) {
        HalfLine left = HalfLine.left(surface);
        return new SpanLine(index, left, left, left.fromM(), left.fromM(), left.toM(), left.fromM() > 0);
    }

    /** Both halves, as one piece where they meet. */
    static List<SpanLine> whole(int index, Surface surface) {
        HalfLine right = HalfLine.right(surface);
        HalfLine left = HalfLine.left(surface);
        List<SpanLine> lines = new ArrayList<>();
        double middle = left.fromM();
        if (right.toM() == middle && right.at(middle).equals(left.at(middle))) {
            lines.add(new SpanLine(index, right, left, middle, right.fromM(), left.toM(), true));
        } else {
            lines.add(new SpanLine(index, right, right, right.toM(), right.fromM(), right.toM(), true));
            lines.add(new SpanLine(index, left, left, left.fromM(), left.fromM(), left.toM(), true));
        }
        return lines;
    }

    /** What the surface is like at one place across. */
    HalfLine.Station at(double yM) {
        return yM <= splitM ? inner.at(yM) : outer.at(yM);
    }

    /** Middle of the surface's span this piece belongs to, m. */
    double middleM() {
        return fromIsTip ? (fromM + toM) / 2 : fromM;
    }

    /** Half of the span that ends with this piece, m. */
    double halfSpanM() {
        return fromIsTip ? (toM - fromM) / 2 : toM - fromM;
    }
}
