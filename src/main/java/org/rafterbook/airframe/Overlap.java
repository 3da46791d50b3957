package org.rafterbook.airframe;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Whether two surfaces lie in, or pass through, each other. */
final class Overlap {

    /** Below this overlap along the stick two surfaces merely touch, m. */
    private static final double TOUCHING_M = 1e-5;

    /** Heights nearer than this share of the smaller chord count as the same place. */
    private static final double SAME_HEIGHT = 0.01;

    private Overlap() {}

    static boolean inTheSamePlace(Surface a, Surface b) {
        for (HalfLine p : halves(a)) {
            for (HalfLine q : halves(b)) {
                if (meet(p, q)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<HalfLine> halves(Surface surface) {
        return List.of(HalfLine.left(surface), HalfLine.right(surface));
    }

    private static boolean meet(HalfLine p, HalfLine q) {
        double from = Math.max(p.fromM(), q.fromM());
        double to = Math.min(p.toM(), q.toM());
        if (to - from <= TOUCHING_M) {
            return false;
        }
        double inset = Math.min(TOUCHING_M / 2, (to - from) / 4);
        double above = 0;
        for (double y : places(p, q, from + inset, to - inset)) {
            HalfLine.Station s = p.at(y);
            HalfLine.Station t = q.at(y);
            double together = Math.min(s.edgeAftM() + s.chordM(), t.edgeAftM() + t.chordM())
                    - Math.max(s.edgeAftM(), t.edgeAftM());
            double height = s.heightM() - t.heightM();
            if (together <= TOUCHING_M) {
                above = 0;
            } else if (Math.abs(height) < SAME_HEIGHT * Math.min(s.chordM(), t.chordM()) || height * above < 0) {
                return true;
            } else {
                above = height;
            }
        }
        return false;
    }

    /** Ends, ribs and places between them. */
    private static List<Double> places(HalfLine p, HalfLine q, double from, double to) {
        TreeSet<Double> ribs = new TreeSet<>(List.of(from, to));
        for (HalfLine line : List.of(p, q)) {
            for (double y : line.acrossM()) {
                if (y > from && y < to) {
                    ribs.add(y);
                }
            }
        }
        List<Double> places = new ArrayList<>();
        double before = from;
        for (double y : ribs) {
            for (int k = 1; k <= 4 && y > before; k++) {
                places.add(before + (y - before) * k / 4);
            }
            if (y == from) {
                places.add(y);
            }
            before = y;
        }
        return places;
    }
}
