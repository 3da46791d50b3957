package org.rafterbook.stability;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
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

    /**
     * The pieces of a surface: its left half alone where a mirrored model is solved, else both halves, as one piece where
     * they meet.
     */
    static List<SpanLine> of(int index, Surface surface, boolean mirrored) {
        HalfLine left = HalfLine.left(surface);
        SpanLine onTheLeft =
                new SpanLine(index, left, left, left.fromM(), left.fromM(), left.toM(), !mirrored || left.fromM() > 0);
        if (mirrored) {
            return List.of(onTheLeft);
        }
        HalfLine right = HalfLine.right(surface);
        double middle = left.fromM();
        if (right.toM() == middle && right.at(middle).equals(left.at(middle))) {
            return List.of(new SpanLine(index, right, left, middle, right.fromM(), left.toM(), true));
        }
        return List.of(new SpanLine(index, right, right, right.toM(), right.fromM(), right.toM(), true), onTheLeft);
    }

    /** What the surface is like at one place across. */
    HalfLine.Station at(double yM) {
        return yM <= splitM ? inner.at(yM) : outer.at(yM);
    }

    /** Places of the ribs across. */
    double[] ribsM() {
        return DoubleStream.concat(Arrays.stream(inner.acrossM()), Arrays.stream(outer.acrossM()))
                .toArray();
    }

    /** Half of the span that ends with this piece, m. */
    double halfSpanM() {
        return fromIsTip ? (toM - fromM) / 2 : toM - fromM;
    }
}
