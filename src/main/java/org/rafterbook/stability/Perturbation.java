package org.rafterbook.stability;

import java.util.List;
import org.rafterbook.airframe.Planform;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;

/**
 * What is not known about the flow and moves a computed neutral point, one thing at a time. The sizes are a judgement from
 * section data at Reynolds numbers of 10,000 to 20,000 and from wakes flat or rolled up (see the stability page of the docs).
 */
public enum Perturbation {
    /** All sections with 15 % less lift slope: each surface answers that much less to all flow that comes to it. */
    WEAKER_SECTIONS,
    /** Downwash of a surface at those behind it 20 % less. */
    LESS_DOWNWASH,
    /** Downwash of a surface at those behind it 20 % more. */
    MORE_DOWNWASH,
    /** Tailplane in air of 10 % less pressure. */
    WEAKER_TAIL;

    private static final double SECTIONS = 0.85;
    private static final double LESS = 0.8;
    private static final double MORE = 1.2;
    private static final double TAIL = 0.9;

    /** Heights nearer than this are one plane, chords. */
    private static final double LEVEL = 0.02;

    /** Neutral point with this perturbation, aft of the origin, m. */
    double neutralPointM(GeometrySolution solution) {
        List<Surface> surfaces = solution.surfaces();
        int n = surfaces.size();
        double[][] influence = new double[n][n];
        double[] load = new double[n];
        for (int i = 0; i < n; i++) {
            load[i] = this == WEAKER_TAIL && surfaces.get(i).role() == Role.TAILPLANE ? TAIL : 1;
            for (int j = 0; j < n; j++) {
                influence[i][j] = i == j ? 1 : factor(surfaces.get(i), surfaces.get(j));
            }
        }
        double moved = solution.scaledNeutralPointM(influence, load) - solution.coarseNeutralPointM();
        return solution.neutralPointM() + moved;
    }

    /** Factor on what one surface does to another. */
    private double factor(Surface to, Surface by) {
        return switch (this) {
            // An answer weaker by a factor to onset and other surfaces alike; the common factor of the onset drops out.
            case WEAKER_SECTIONS -> to.role() == by.role() && alongside(to, by) ? 1 : SECTIONS;
            case LESS_DOWNWASH -> behind(to, by) ? LESS : 1;
            case MORE_DOWNWASH -> behind(to, by) ? MORE : 1;
            case WEAKER_TAIL -> 1;
        };
    }

    /** Whether two surfaces lie side by side in one plane, as the halves of one: what one does to the other is its own. */
    static boolean alongside(Surface one, Surface other) {
        Planform a = Planform.of(one);
        Planform b = Planform.of(other);
        double chord = Math.min(a.meanChordM(), b.meanChordM());
        return Math.abs(a.heightM() - b.heightM()) < LEVEL * chord
                && Math.abs(a.quarterChordM() - b.quarterChordM()) < chord / 2;
    }

    private static boolean behind(Surface rear, Surface front) {
        Planform a = Planform.of(front);
        return Planform.of(rear).quarterChordM() > a.meanChordEdgeM() + a.meanChordM();
    }
}
