package org.rafterbook.airframe;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Checks an airframe and says, sentence by sentence, what is missing, where, and what can still be shown. */
public final class AirframeProblems {

    private static final String DRAWING = "The drawing and the other surfaces are still shown; no margin.";
    private static final String GEOMETRY = "Neutral point, lift slope and shares are still shown; no margin.";

    /** A span or chord below this is none, m. */
    private static final double LEAST_M = 1e-4;

    /** A surface whose tip is as near as this to another's first rib carries on with it, m. */
    private static final double TOUCHING_M = 1e-3;

    private final Airframe airframe;
    private final List<AirframeProblem> found = new ArrayList<>();

    private AirframeProblems(Airframe airframe) {
        this.airframe = airframe;
    }

    /** All problems of geometry, masses and balance, the graver first. */
    public static List<AirframeProblem> of(Airframe airframe) {
        AirframeProblems problems = new AirframeProblems(airframe);
        problems.geometry();
        problems.masses();
        return List.copyOf(problems.found);
    }

    /** The problems of the surfaces alone. */
    public static List<AirframeProblem> ofGeometry(Airframe airframe) {
        AirframeProblems problems = new AirframeProblems(airframe);
        problems.geometry();
        return List.copyOf(problems.found);
    }

    /** The problems of one surface by itself. */
    public static List<AirframeProblem> of(Surface surface) {
        AirframeProblems problems = new AirframeProblems(new Airframe(List.of(surface), List.of(), null, null));
        problems.surface(surface);
        return List.copyOf(problems.found);
    }

    private void geometry() {
        if (airframe.surfaces().stream().noneMatch(s -> s.role() == Role.WING)) {
            whole(
                    AirframeProblem.Kind.NO_WING,
                    "There is no wing: enter its ribs, or its span and chord.",
                    "Masses and balance are still shown.");
        }
        Set<String> names = new HashSet<>();
        List<Surface> sound = new ArrayList<>();
        for (Surface surface : airframe.surfaces()) {
            if (!names.add(surface.name())) {
                add(
                        AirframeProblem.Kind.SAME_NAME,
                        surface.name(),
                        "Two surfaces are named \"" + surface.name() + "\": each needs a name of its own.",
                        DRAWING);
            }
            int before = found.size();
            surface(surface);
            if (found.size() == before && surface.role() != Role.FIN) {
                sound.add(surface);
            }
        }
        for (int i = 0; i < sound.size(); i++) {
            for (int j = i + 1; j < sound.size(); j++) {
                if (Overlap.inTheSamePlace(sound.get(i), sound.get(j))) {
                    samePlace(sound.get(i), sound.get(j));
                }
            }
        }
        sound.forEach(this::slot);
        if (airframe.surfaces().stream().noneMatch(s -> s.role() == Role.TAILPLANE)) {
            whole(
                    AirframeProblem.Kind.NO_TAIL,
                    "There is no tailplane.",
                    "The neutral point shown is that of the wing alone.");
        }
    }

    /** Halves apart may be meant; as a slip of the pen they would change everything without a word. */
    private void slot(Surface s) {
        double from = s.ribs().get(0).outM();
        boolean filled = airframe.surfaces().stream()
                .filter(o -> o != s && !o.ribs().isEmpty())
                .anyMatch(o -> Math.abs(o.ribs().get(o.ribs().size() - 1).outM() - from) < TOUCHING_M);
        if (from > LEAST_M && s.isSymmetric() && !filled) {
            add(
                    AirframeProblem.Kind.SLOT,
                    s.name(),
                    String.format(
                            Locale.ROOT,
                            "The first rib of \"%s\" stands %.1f mm beside the middle: it is taken as two halves with a"
                                    + " slot of %.1f mm between them.",
                            s.name(),
                            1000 * from,
                            2000 * from),
                    "All that is shown is of such a surface.");
        }
    }

    private void surface(Surface s) {
        if (!numbersAreFinite(s)) {
            add(
                    AirframeProblem.Kind.NOT_A_NUMBER,
                    s.name(),
                    "\"" + s.name() + "\" has a place, angle or rib that is not a number.",
                    DRAWING);
            return;
        }
        ribs(s, s.ribs(), s.isSymmetric() || s.ribsLeft() == null ? "" : " on the right");
        if (s.ribsLeft() != null) {
            ribs(s, s.leftRibs(), " on the left");
        }
        if (Math.abs(s.tiltRad()) > Math.toRadians(80)) {
            add(
                    AirframeProblem.Kind.TOO_STEEP,
                    s.name(),
                    String.format(
                            Locale.ROOT,
                            "\"%s\" is tilted by %.0f degrees: a wing or tailplane may be tilted by at most 80; a surface"
                                    + " that stands upright is a fin.",
                            s.name(),
                            Math.toDegrees(s.tiltRad())),
                    DRAWING);
        }
    }

    private void ribs(Surface s, List<Rib> ribs, String side) {
        double tip = ribs.isEmpty() ? 0 : ribs.get(ribs.size() - 1).outM();
        if (ribs.size() < 2 || !(tip > LEAST_M)) {
            add(
                    AirframeProblem.Kind.ZERO_SPAN,
                    s.name(),
                    "\"" + s.name() + "\" has no span" + side + ": enter a span, or at least two ribs apart.",
                    DRAWING);
            return;
        }
        for (int i = 0; i < ribs.size(); i++) {
            Rib rib = ribs.get(i);
            if (i == 0 && rib.outM() < 0) {
                crossed(
                        s,
                        side,
                        String.format(Locale.ROOT, "its first rib stands %.1f mm beyond the middle", -mm(rib)));
            }
            if (i > 0 && rib.outM() <= ribs.get(i - 1).outM()) {
                crossed(
                        s,
                        side,
                        String.format(
                                Locale.ROOT,
                                "rib %d at %.1f mm does not lie outside rib %d at %.1f mm",
                                i + 1,
                                mm(rib),
                                i,
                                mm(ribs.get(i - 1))));
            }
            // A rounded tip may end in a point; anywhere else a rib without chord is a hole.
            if (rib.chordM() < 0 || (rib.chordM() < LEAST_M && i < ribs.size() - 1)) {
                add(
                        AirframeProblem.Kind.ZERO_CHORD,
                        s.name(),
                        String.format(
                                Locale.ROOT,
                                "\"%s\"%s has no chord at rib %d (%.1f mm out): enter a chord above zero.",
                                s.name(),
                                side,
                                i + 1,
                                mm(rib)),
                        DRAWING);
            }
        }
    }

    private void crossed(Surface s, String side, String how) {
        add(
                AirframeProblem.Kind.CROSSED_RIBS,
                s.name(),
                "The ribs of \"" + s.name() + "\"" + side + " cross: " + how + ".",
                DRAWING);
    }

    private void samePlace(Surface a, Surface b) {
        add(
                AirframeProblem.Kind.SAME_PLACE,
                b.name(),
                "\"" + a.name() + "\" and \"" + b.name() + "\" lie in the same place: give one of them another height"
                        + " or another place along the stick.",
                "The drawing, areas and balance are still shown; no neutral point.");
    }

    private void masses() {
        for (MassItem mass : airframe.masses()) {
            if (!(mass.massKg() >= 0) || !Double.isFinite(mass.massKg() + mass.aftM() + mass.riseM())) {
                add(
                        AirframeProblem.Kind.BAD_MASS,
                        mass.name(),
                        "The mass \"" + mass.name() + "\" has no sound mass or place: enter both as numbers, the mass"
                                + " not below zero.",
                        GEOMETRY);
            }
        }
        BalancePoint balance = Balance.of(airframe, null);
        if (balance.massKg() == null) {
            whole(
                    AirframeProblem.Kind.NO_MASS,
                    balance.missing() == null ? "No mass is given." : balance.missing(),
                    balance.aftM() == null
                            ? GEOMETRY
                            : "Neutral point and margin are still shown; no speed and no trim.");
        }
        if (balance.aftM() == null && balance.massKg() != null) {
            whole(
                    AirframeProblem.Kind.NO_BALANCE,
                    balance.missing() == null ? "The balance point is unknown." : balance.missing(),
                    GEOMETRY);
        }
    }

    private static boolean numbersAreFinite(Surface s) {
        double sum = s.edgeAftM() + s.riseM() + s.incidenceRad() + s.camber() + s.offsetLeftM() + s.tiltRad();
        for (Rib r : s.ribs()) {
            sum += r.outM() + r.edgeAftM() + r.chordM() + r.riseM() + r.twistRad();
        }
        for (Rib r : s.leftRibs()) {
            sum += r.outM() + r.edgeAftM() + r.chordM() + r.riseM() + r.twistRad();
        }
        Double zeroLift = s.zeroLiftRad();
        Double cm = s.cmQuarter();
        return Double.isFinite(sum + (zeroLift == null ? 0 : zeroLift) + (cm == null ? 0 : cm));
    }

    private static double mm(Rib rib) {
        return rib.outM() * 1000;
    }

    private void whole(AirframeProblem.Kind kind, String sentence, String stillShown) {
        found.add(new AirframeProblem(kind, null, sentence, stillShown));
    }

    private void add(AirframeProblem.Kind kind, String surface, String sentence, String stillShown) {
        found.add(new AirframeProblem(kind, surface, sentence, stillShown));
    }
}
