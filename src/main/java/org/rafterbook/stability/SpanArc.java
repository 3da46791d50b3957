package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.rafterbook.airframe.HalfLine;

/**
 * One piece of a surface measured along its slant, and how densely panels have to lie across it: as the cosine rule asks
 * towards its ends and, with the same root of the distance, towards the bends of its edges and its height, where an
 * even lattice is wrong in the first order of its panels' width.
 */
final class SpanArc {

    /** Bends that turn less, as a change of slope, are left to the panels as they lie. */
    private static final double WEAKEST = 0.15;

    /** Panels draw together towards a bend as towards a tip from this change of slope on, and less below. */
    private static final double FULL = 0.5;

    /** Sharp bends, of 60 degrees of sweep and more, need still denser panels. */
    private static final double MOST_WEIGHT = 1.5;

    /** A bend turns at least this much of what it turns seen from twice as far; a curve drawn by many ribs turns half. */
    private static final double SHARP = 0.75;

    /** Among ribs closer than panels, what turns so much more from near than from far is a rib out of line. */
    private static final double ROUGH = 1.5;

    /** The angle of some three panels, within which a change of slope counts as one bend. */
    private static final double REACH = 0.26;

    private static final int SAMPLES = 8;

    private final SpanLine line;
    private final double[] y;
    private final double[] slant;
    private final double middle;
    private final double half;
    private final List<Bend> bends;

    /**
     * Where a surface's edges or its height turn.
     *
     * @param yM place across, m
     * @param slantM the same along the slant, m
     * @param widthM how far from there the slopes were taken, m
     * @param amongMany whether other ribs stand closer than panels
     * @param strength change of slope, the largest of leading edge, trailing edge and height
     * @param sweep the same of the edges alone
     */
    record Bend(double yM, double slantM, double widthM, boolean amongMany, double strength, double sweep) {
        /** How densely panels draw together, over how they do towards a tip. */
        private double weight() {
            return strength < FULL ? strength / FULL : Math.max(1, Math.min(MOST_WEIGHT, 1 + (strength - 1) / 6));
        }

        private boolean near(Bend other) {
            return other.amongMany && Math.abs(yM - other.yM) < widthM;
        }
    }

    SpanArc(SpanLine line) {
        this.line = line;
        TreeSet<Double> places = new TreeSet<>(List.of(line.fromM(), line.toM()));
        for (double rib : line.ribsM()) {
            if (rib > line.fromM() && rib < line.toM()) {
                places.add(rib);
            }
        }
        y = places.stream().mapToDouble(Double::doubleValue).toArray();
        slant = new double[y.length];
        for (int i = 1; i < y.length; i++) {
            double rise = line.at(y[i]).heightM() - line.at(y[i - 1]).heightM();
            slant[i] = slant[i - 1] + Math.hypot(y[i] - y[i - 1], rise);
        }
        double whole = slant[y.length - 1];
        middle = line.fromIsTip() ? whole / 2 : 0;
        half = whole - middle;
        bends = find();
    }

    private List<Bend> find() {
        List<Bend> all = new ArrayList<>();
        for (int i = line.fromIsTip() ? 1 : 0; i < y.length - 1; i++) {
            double out = (slant[i] - middle) / half;
            double width = REACH * Math.sqrt(1 - out * out) * half * (y[i + 1] - y[i]) / (slant[i + 1] - slant[i]);
            double room = line.fromIsTip() ? Math.min(line.toM() - y[i], y[i] - line.fromM()) : line.toM() - y[i];
            // Nearer to a tip the panels lie densely as it is.
            if (room > width / 2 && turns(i, Math.min(width, room))) {
                all.add(bend(i, width / 2));
            }
        }
        // Of ribs closer together than panels only the one counts at which the line turns most.
        return all.stream()
                .filter(bend -> all.stream().noneMatch(other -> other.strength > bend.strength && other.near(bend)))
                .toList();
    }

    /** Half the slant length of the surface that ends with this piece, m. */
    double halfM() {
        return half;
    }

    List<Bend> bends() {
        return bends;
    }

    /** Angle per metre across that a panel may span. */
    double density(double yM) {
        if (yM < line.fromM() || yM > line.toM()) {
            double beyond = half + Math.max(yM - line.toM(), line.fromM() - yM);
            return root(beyond * beyond - half * half);
        }
        int i = piece(yM);
        double steep = (slant[i] - slant[i - 1]) / (y[i] - y[i - 1]);
        double at = slant[i - 1] + steep * (yM - y[i - 1]);
        double densest = root(half * half - (at - middle) * (at - middle));
        for (Bend bend : bends) {
            densest = Math.max(densest, bend.weight() * root(2 * half * (at - bend.slantM)));
        }
        return steep * densest;
    }

    private static double root(double square) {
        return square == 0 ? 0 : 1 / Math.sqrt(Math.abs(square));
    }

    /** Index of the rib that a place lies up to. */
    private int piece(double yM) {
        int i = Arrays.binarySearch(y, yM);
        return Math.max(1, i < 0 ? -i - 1 : i);
    }

    /** Whether the line turns at a rib, and not only there in a row of ribs out of line, nor all along as a curve does. */
    private boolean turns(int i, double width) {
        double near = bend(i, width / 2).strength;
        double far = bend(i, width).strength;
        boolean rough = spacing(i) < width / 4 && near > ROUGH * far;
        return near > WEAKEST && near > SHARP * far && !rough;
    }

    private double spacing(int i) {
        return i == 0 ? y[1] - y[0] : Math.min(y[i + 1] - y[i], y[i] - y[i - 1]);
    }

    /** Slopes are those between means over halves of the width, so that ribs a little out of line do not count. */
    private Bend bend(int i, double widthM) {
        double[] lead = new double[4];
        double[] trail = new double[4];
        double[] height = new double[4];
        for (int part = 0; part < 4; part++) {
            for (int k = 0; k < SAMPLES; k++) {
                HalfLine.Station s = at(y[i] + widthM * ((part + (k + 0.5) / SAMPLES) / 2 - 1));
                lead[part] += s.edgeAftM() / SAMPLES;
                trail[part] += (s.edgeAftM() + s.chordM()) / SAMPLES;
                height[part] += s.heightM() / SAMPLES;
            }
        }
        double sweep = Math.max(turn(lead, widthM), turn(trail, widthM));
        return new Bend(y[i], slant[i], widthM, spacing(i) < widthM / 2, Math.max(sweep, turn(height, widthM)), sweep);
    }

    private static double turn(double[] mean, double widthM) {
        return Math.abs(mean[0] - mean[1] - mean[2] + mean[3]) * 2 / widthM;
    }

    /** The line goes on in its mirror image where it does not end at the middle. */
    private HalfLine.Station at(double yM) {
        return line.at(line.fromIsTip() ? yM : Math.abs(yM));
    }
}
