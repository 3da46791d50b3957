package org.rafterbook.airframe;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which preset of {@link Planforms} a half's ribs were made by, so that they can be edited as such again.
 *
 * @param spanM tip to tip
 * @param chordM chord at the root
 * @param tipM chord at the tip of a taper, length of each rounded tip; 0 for the others
 * @param straightAt fraction of the chord whose line runs straight across the span
 */
public record PlanformGuess(Kind kind, double spanM, double chordM, double tipM, double straightAt) {

    /** The presets, and ribs that none of them made. */
    public enum Kind {
        RECTANGLE,
        TAPER,
        ELLIPSE,
        ROUNDED_TIPS,
        RIBS
    }

    private static final double CLOSE = 1e-9;

    /** The preset that gives these ribs, but for height and twist; {@link Kind#RIBS} where none does. */
    public static PlanformGuess of(List<Rib> ribs) {
        if (ribs.size() < 2 || ribs.get(0).outM() != 0) {
            return none(ribs);
        }
        Rib root = ribs.get(0);
        Rib tip = ribs.get(ribs.size() - 1);
        double span = 2 * tip.outM();
        double chord = root.chordM();
        if (same(ribs, Planforms.rectangle(span, chord))) {
            return new PlanformGuess(Kind.RECTANGLE, span, chord, 0, 0.25);
        }
        if (ribs.size() == 2 && chord != tip.chordM()) {
            double at = round(tip.edgeAftM() / (chord - tip.chordM()));
            return new PlanformGuess(Kind.TAPER, span, chord, tip.chordM(), at);
        }
        if (tip.chordM() == 0 && chord > 0) {
            double at = round(tip.edgeAftM() / chord);
            if (same(ribs, Planforms.ellipse(span, chord, at))) {
                return new PlanformGuess(Kind.ELLIPSE, span, chord, 0, at);
            }
            double length = round(tip.outM() - ribs.get(1).outM());
            if (same(ribs, Planforms.roundedTips(span, chord, length, at))) {
                return new PlanformGuess(Kind.ROUNDED_TIPS, span, chord, length, at);
            }
        }
        return none(ribs);
    }

    /** Differences and quotients of what was typed, without the noise of arithmetic. */
    private static double round(double value) {
        return Math.rint(value * 1e12) / 1e12;
    }

    private static PlanformGuess none(List<Rib> ribs) {
        double span = ribs.isEmpty() ? 0 : 2 * ribs.get(ribs.size() - 1).outM();
        return new PlanformGuess(
                Kind.RIBS, span, ribs.isEmpty() ? 0 : ribs.get(0).chordM(), 0, 0.25);
    }

    private static boolean same(List<Rib> a, List<Rib> b) {
        if (a.size() != b.size()) {
            return false;
        }
        for (int i = 0; i < a.size(); i++) {
            if (Math.abs(a.get(i).outM() - b.get(i).outM()) > CLOSE
                    || Math.abs(a.get(i).edgeAftM() - b.get(i).edgeAftM()) > CLOSE
                    || Math.abs(a.get(i).chordM() - b.get(i).chordM()) > CLOSE) {
                return false;
            }
        }
        return true;
    }

    /** The ribs of the preset, flat and without twist; null where no preset is meant. */
    public @Nullable List<Rib> ribs() {
        return switch (kind) {
            case RECTANGLE -> Planforms.rectangle(spanM, chordM);
            case TAPER -> Planforms.taper(spanM, chordM, tipM, straightAt);
            case ELLIPSE -> Planforms.ellipse(spanM, chordM, straightAt);
            case ROUNDED_TIPS -> Planforms.roundedTips(spanM, chordM, tipM, straightAt);
            case RIBS -> null;
        };
    }
}
