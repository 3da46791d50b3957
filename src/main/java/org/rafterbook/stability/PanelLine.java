package org.rafterbook.stability;

import java.util.Arrays;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.rafterbook.airframe.HalfLine;

/**
 * One piece of a surface as its panels show it: straight between the edges of the shared grid, and of all such lines the
 * one nearest to the ribs' own (least squares), so that area and sweep stay what they are however many ribs lie between
 * two edges.
 */
final class PanelLine {

    private final SpanLine line;
    private final int first;
    private final double[] y;
    private final double[] edgeAft;
    private final double[] chord;
    private final double[] height;

    PanelLine(SpanLine line, SpanGrid grid) {
        this.line = line;
        first = grid.edgeAt(line.fromM());
        int last = grid.edgeAt(line.toM());
        y = new double[last - first + 1];
        Arrays.setAll(y, j -> grid.edge(first + j));
        double[] pieces = pieces();
        edgeAft = nearest(pieces, HalfLine.Station::edgeAftM);
        chord = nearest(pieces, HalfLine.Station::chordM);
        height = nearest(pieces, HalfLine.Station::heightM);
        // Towards a pointed tip the nearest line may dip a little below.
        Arrays.setAll(chord, j -> Math.max(0, chord[j]));
    }

    /** Panel edges and the ribs between them: the line is straight from each to the next. */
    private double[] pieces() {
        TreeSet<Double> places = new TreeSet<>();
        for (double edge : y) {
            places.add(edge);
        }
        for (double rib : line.ribsM()) {
            if (rib > y[0] && rib < y[y.length - 1]) {
                places.add(rib);
            }
        }
        return places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Values at the panel edges whose straight lines are nearest to a quantity: hat functions, a tridiagonal system. */
    private double[] nearest(double[] pieces, ToDoubleFunction<HalfLine.Station> quantity) {
        int n = y.length;
        double[] diagonal = new double[n];
        double[] right = new double[n];
        int j = 0;
        for (int p = 0; p + 1 < pieces.length; p++) {
            double a = pieces[p];
            double b = pieces[p + 1];
            if (a >= y[j + 1]) {
                j++;
            }
            double width = y[j + 1] - y[j];
            double sixth = (b - a) / 6;
            double fa = quantity.applyAsDouble(line.at(a));
            double fb = quantity.applyAsDouble(line.at(b));
            double ta = (a - y[j]) / width;
            double tb = (b - y[j]) / width;
            // Simpson's rule is exact for the product of two straight lines.
            double inner = sixth * (ta * fa + (ta + tb) * (fa + fb) + tb * fb);
            right[j + 1] += inner;
            right[j] += 3 * sixth * (fa + fb) - inner;
        }
        for (int i = 0; i + 1 < n; i++) {
            diagonal[i] += (y[i + 1] - y[i]) / 3;
            diagonal[i + 1] += (y[i + 1] - y[i]) / 3;
        }
        for (int i = 1; i < n; i++) {
            double off = (y[i] - y[i - 1]) / 6;
            double factor = off / diagonal[i - 1];
            diagonal[i] -= factor * off;
            right[i] -= factor * right[i - 1];
        }
        double[] value = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double beyond = i + 1 < n ? (y[i + 1] - y[i]) / 6 * value[i + 1] : 0;
            value[i] = (right[i] - beyond) / diagonal[i];
        }
        return value;
    }

    SpanLine line() {
        return line;
    }

    /** Index of the first panel edge in the shared grid. */
    int first() {
        return first;
    }

    /** Number of strips. */
    int strips() {
        return y.length - 1;
    }

    double edgeM(int place) {
        return y[place];
    }

    /** Leading edge aft of the origin at a panel edge, m. */
    double edgeAftM(int place) {
        return edgeAft[place];
    }

    /** Chord at a panel edge, m. */
    double chordM(int place) {
        return chord[place];
    }

    /** Height at a panel edge, m. */
    double heightM(int place) {
        return height[place];
    }
}
