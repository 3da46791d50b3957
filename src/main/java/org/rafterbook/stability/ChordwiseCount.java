package org.rafterbook.stability;

import java.util.List;
import org.rafterbook.airframe.HalfLine;

/**
 * How many panels along the chord an arrangement needs: more for small gaps, steps between touching pieces, very low
 * aspect ratios and sharply bent edges.
 */
final class ChordwiseCount {

    private static final int MOST = 6;
    private static final int PLACES = 12;

    /** Panels of the coarsest lattice per chord over gap in chords: they stay shorter than 2.2 gaps. */
    private static final double PER_CHORD_OVER_GAP = 0.45;

    /** Panels of the finest lattice times aspect ratio. */
    private static final double TIMES_ASPECT_RATIO = 8;

    /** Panels of the coarsest lattice where pieces that touch step at their edges: the tip there lies along a chord. */
    private static final double STEPPED = 6;

    /** Edges that differ by less, over the chord, are no step. */
    private static final double STEP = 0.01;

    /** Change of slope from which a bend asks for one more. */
    private static final double STRONG = 2.5;

    private ChordwiseCount() {}

    /**
     * The count of the coarsest lattice.
     *
     * @param least the count for models that need no more
     * @param lattices how many are solved, the finest with so many times the count
     * @param sweepBend the strongest change of slope of the surfaces' edges
     */
    static int of(List<SpanLine> lines, int least, int lattices, double sweepBend) {
        double need = sweepBend > STRONG ? least + 1 : least;
        for (SpanLine line : lines) {
            double chord = 0;
            for (int i = 0; i < PLACES; i++) {
                chord += line.at(between(line.fromM(), line.toM(), i)).chordM() / PLACES;
            }
            need = Math.max(need, TIMES_ASPECT_RATIO / lattices * chord / (2 * line.halfSpanM()));
            for (SpanLine other : lines) {
                if (other.surface() > line.surface()) {
                    need = Math.max(need, PER_CHORD_OVER_GAP * chordsPerGap(line, other));
                    need = Math.max(need, isStepped(line, other) ? STEPPED : 0);
                }
            }
        }
        return Math.min(Math.max(least, MOST), (int) Math.ceil(need - 1e-9));
    }

    /** Whether one piece begins where the other ends, at its height and with another leading or trailing edge. */
    private static boolean isStepped(SpanLine a, SpanLine b) {
        return isStepped(a.toM(), a, b.fromM(), b) || isStepped(b.toM(), b, a.fromM(), a);
    }

    private static boolean isStepped(double endM, SpanLine a, double beginM, SpanLine b) {
        HalfLine.Station s = a.at(endM);
        HalfLine.Station t = b.at(beginM);
        double chord = Math.max(s.chordM(), t.chordM());
        double lead = Math.abs(s.edgeAftM() - t.edgeAftM());
        double trail = Math.abs(s.edgeAftM() + s.chordM() - t.edgeAftM() - t.chordM());
        boolean overlap = overlap(s, t) > 0 && Math.abs(s.heightM() - t.heightM()) < chord / 2;
        return overlap && Math.abs(endM - beginM) < STEP * chord && Math.max(lead, trail) > STEP * chord;
    }

    private static double overlap(HalfLine.Station s, HalfLine.Station t) {
        return Math.min(s.edgeAftM() + s.chordM(), t.edgeAftM() + t.chordM()) - Math.max(s.edgeAftM(), t.edgeAftM());
    }

    /** The largest chord over vertical distance where one surface lies above the other. */
    private static double chordsPerGap(SpanLine a, SpanLine b) {
        double from = Math.max(a.fromM(), b.fromM());
        double to = Math.min(a.toM(), b.toM());
        double most = 0;
        for (int i = 0; i < PLACES && to > from; i++) {
            double y = between(from, to, i);
            HalfLine.Station s = a.at(y);
            HalfLine.Station t = b.at(y);
            double overlap = overlap(s, t);
            double gap = Math.abs(s.heightM() - t.heightM());
            // Surfaces that merely touch, or meet at one place, are no stack.
            if (overlap > 1e-5 && gap > 0) {
                most = Math.max(most, Math.max(s.chordM(), t.chordM()) / gap);
            }
        }
        return most;
    }

    private static double between(double from, double to, int i) {
        return from + (to - from) * (i + 0.5) / PLACES;
    }
}
