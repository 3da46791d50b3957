package org.rafterbook.airframe;

import java.util.ArrayList;
import java.util.List;

/**
 * Planform presets turned into ribs of one half, root first. Lengths in metres; {@code straightAt} is the fraction of the
 * chord whose line runs straight across the whole span (0 leading edge, 0.25 quarter chord, 1 trailing edge).
 */
public final class Planforms {

    private static final int ARC_PIECES = 16;

    private Planforms() {}

    /** A rectangle: two ribs. */
    public static List<Rib> rectangle(double spanM, double chordM) {
        return List.of(rib(0, 0, chordM), rib(spanM / 2, 0, chordM));
    }

    /** A straight taper from root to tip: two ribs. */
    public static List<Rib> taper(double spanM, double rootChordM, double tipChordM, double straightAt) {
        return List.of(rib(0, 0, rootChordM), rib(spanM / 2, straightAt * (rootChordM - tipChordM), tipChordM));
    }

    /** An ellipse as a polygon of the ellipse's own area, pi/4 span times root chord; the chord is zero at the tip. */
    public static List<Rib> ellipse(double spanM, double rootChordM, double straightAt) {
        return roundedTips(spanM, rootChordM, spanM / 2, straightAt);
    }

    /**
     * A constant chord with elliptic tips {@code tipLengthM} long, each a polygon of the quarter ellipses' own area; the
     * chord is zero at the very tip.
     */
    public static List<Rib> roundedTips(double spanM, double chordM, double tipLengthM, double straightAt) {
        double tip = Math.min(tipLengthM, spanM / 2);
        double straight = spanM / 2 - tip;
        List<Rib> ribs = new ArrayList<>();
        if (straight > 0) {
            ribs.add(rib(0, 0, chordM));
        }
        ribs.add(rib(straight, 0, chordM));
        double step = Math.PI / 2 / ARC_PIECES;
        double fuller = fuller(step);
        for (int i = 1; i <= ARC_PIECES; i++) {
            double chord = i == ARC_PIECES ? 0 : chordM * Math.cos(i * step) * fuller;
            double out = i == ARC_PIECES ? spanM / 2 : straight + tip * Math.sin(i * step);
            ribs.add(rib(out, straightAt * (chordM - chord), chord));
        }
        return List.copyOf(ribs);
    }

    /** By how much the ribs between root and tip must grow so that the inscribed polygon has the ellipse's area. */
    private static double fuller(double step) {
        double polygon = 0;
        for (int i = 0; i < ARC_PIECES; i++) {
            double width = Math.sin((i + 1) * step) - Math.sin(i * step);
            polygon += width * (Math.cos(i * step) + Math.cos((i + 1) * step)) / 2;
        }
        double ofTheRoot = Math.sin(step) / 2;
        return (Math.PI / 4 - ofTheRoot) / (polygon - ofTheRoot);
    }

    private static Rib rib(double outM, double edgeAftM, double chordM) {
        return new Rib(outM, edgeAftM, chordM, 0, 0);
    }
}
