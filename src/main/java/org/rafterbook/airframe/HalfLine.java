package org.rafterbook.airframe;

import java.util.List;

/**
 * One half of a surface as a line of ribs in the airframe's axes, so that leading edge, chord and height can be read at
 * any place across the span. All lengths in metres.
 */
public final class HalfLine {

    private final Surface surface;
    private final List<Rib> ribs;
    private final double side;
    private final double[] acrossM;

    private HalfLine(Surface surface, List<Rib> ribs, double side) {
        this.surface = surface;
        this.ribs = ribs;
        this.side = side;
        this.acrossM = ribs.stream().mapToDouble(this::across).toArray();
    }

    /** The left half, from the middle outward. */
    public static HalfLine left(Surface surface) {
        return new HalfLine(surface, surface.leftRibs(), 1);
    }

    /** The right half, from the middle outward; its places across are negative. */
    public static HalfLine right(Surface surface) {
        return new HalfLine(surface, surface.ribs(), -1);
    }

    /** Places of the ribs to the left of the stick, from the middle outward. */
    public double[] acrossM() {
        return acrossM.clone();
    }

    /** The rightmost place. */
    public double fromM() {
        return Math.min(acrossM[0], acrossM[acrossM.length - 1]);
    }

    /** The leftmost place. */
    public double toM() {
        return Math.max(acrossM[0], acrossM[acrossM.length - 1]);
    }

    /** Chord, leading edge, height and twist at a place across; places beyond the ends take the end rib. */
    public Station at(double yM) {
        int last = acrossM.length - 1;
        int i = 1;
        while (i < last && (yM - acrossM[i]) * side > 0) {
            i++;
        }
        double width = acrossM[i] - acrossM[i - 1];
        double t = width == 0 ? 0 : Math.min(1, Math.max(0, (yM - acrossM[i - 1]) / width));
        Rib a = ribs.get(i - 1);
        Rib b = ribs.get(i);
        return new Station(
                surface.edgeAftM() + mix(a.edgeAftM(), b.edgeAftM(), t),
                mix(a.chordM(), b.chordM(), t),
                mix(height(a), height(b), t),
                mix(a.twistRad(), b.twistRad(), t));
    }

    private double across(Rib rib) {
        return surface.offsetLeftM()
                + side * rib.outM() * Math.cos(surface.tiltRad())
                - rib.riseM() * Math.sin(surface.tiltRad());
    }

    private double height(Rib rib) {
        return surface.riseM()
                + side * rib.outM() * Math.sin(surface.tiltRad())
                + rib.riseM() * Math.cos(surface.tiltRad());
    }

    private static double mix(double a, double b, double t) {
        return t == 1 ? b : a + (b - a) * t;
    }

    /**
     * What a surface is like at one place across its span.
     *
     * @param edgeAftM leading edge aft of the origin, m
     * @param chordM chord, m
     * @param heightM height of the leading edge above the stick's centre line, m
     * @param twistRad twist of its own, rad
     */
    public record Station(double edgeAftM, double chordM, double heightM, double twistRad) {}
}
