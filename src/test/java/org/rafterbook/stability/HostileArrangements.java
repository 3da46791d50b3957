package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeProblems;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;

/**
 * Random arrangements from a seed that lattices find hard: kinked and forward-swept edges, small gaps, tails in a wing's
 * wake and close behind a wing, very low and very high aspect ratios, points, tiny centre panels, offset, tilted and
 * dihedral wings, three wings, tails ahead and wider than the wing, wings in touching pieces, a fin.
 */
final class HostileArrangements {

    static final List<String> KINDS = List.of(
            "kinked leading edge",
            "forward sweep",
            "gap of 0.05 to 0.3 chords",
            "tail in the wake or a few mm off it",
            "tail close behind the wing",
            "aspect ratio 0.7 to 1.5",
            "aspect ratio 12 to 25",
            "pointed and elliptic",
            "tiny centre panel",
            "offset or unlike halves",
            "tilt and dihedral up to 30 degrees",
            "three wings",
            "tail ahead",
            "tail wider than the wing",
            "wing in touching pieces",
            "small gap, kinked");

    private final Random random;
    private final double span;
    private final List<Surface> surfaces = new ArrayList<>();

    private HostileArrangements(long seed) {
        random = new Random(seed * 7919 + 11);
        random.nextDouble();
        span = between(0.3, 0.5);
    }

    static String kind(long seed) {
        return KINDS.get((int) (seed % KINDS.size()));
    }

    static Airframe of(long seed) {
        for (long attempt = 0; ; attempt++) {
            HostileArrangements made = new HostileArrangements(seed + 1_000_003 * attempt);
            made.make((int) (seed % KINDS.size()));
            Airframe airframe = new Airframe(made.surfaces, List.of(), null, null);
            if (AirframeProblems.ofGeometry(airframe).stream()
                    .noneMatch(p -> p.kind().hidesNeutralPoint())) {
                return airframe;
            }
        }
    }

    private double between(double a, double b) {
        return a + (b - a) * random.nextDouble();
    }

    private boolean coin() {
        return random.nextBoolean();
    }

    private void make(int kind) {
        double chord = span / between(2.5, 7);
        switch (kind) {
            case 0 -> oneWing(kinked(span, chord), chord, true);
            case 1 -> oneWing(swept(span, chord, between(-45, -15)), chord, true);
            case 2 -> twoWings(chord, between(0.05, 0.3), usual(span, chord), usual(span * between(0.7, 1), chord));
            case 3 -> {
                oneWing(usual(span, chord), chord, false);
                wakeTail(chord);
            }
            case 4 -> {
                List<Rib> wing = coin() ? usual(span, chord) : swept(span, chord, between(0, 30));
                add("wing", Role.WING, 0, 0, wing);
                double back = largest(wing);
                double rise = coin() ? 0 : between(0, 0.2) * chord;
                add(
                        "tail",
                        Role.TAILPLANE,
                        back + between(0.02, 0.4) * chord,
                        rise,
                        usual(span * between(0.4, 0.95), chord * between(0.3, 0.8)));
            }
            case 5 -> {
                double low = span / between(0.7, 1.5);
                oneWing(coin() ? Planforms.rectangle(span, low) : any(span, low), low, true);
            }
            case 6 -> {
                double high = span / between(12, 25);
                oneWing(any(span, high), high, true);
            }
            case 7 -> oneWing(pointed(span, chord), chord, true);
            case 8 -> {
                double tiny = between(0.01, 0.06) * span / 2;
                oneWing(
                        List.of(
                                new Rib(0, 0, chord, 0, 0),
                                new Rib(tiny, 0, chord, 0, 0),
                                new Rib(
                                        span / 2,
                                        between(-0.1, 0.6) * span / 2,
                                        chord * between(0.4, 1),
                                        between(0, 0.5) * span / 2,
                                        0)),
                        chord,
                        true);
            }
            case 9 -> {
                List<Rib> left = coin() ? null : usual(span * between(0.8, 1.1), chord);
                double offset = left == null ? between(0.005, 0.04) : 0;
                surfaces.add(
                        new Surface("wing", Role.WING, 0, 0, 0, 0, usual(span, chord), left, offset, 0, null, null));
                tail(chord);
            }
            case 10 -> {
                double slope = Math.tan(Math.toRadians(between(10, 30)));
                List<Rib> wing = List.of(
                        new Rib(0, 0, chord, 0, 0), new Rib(span / 2, 0.05 * chord, 0.9 * chord, slope * span / 2, 0));
                double tilt = coin() ? 0 : Math.toRadians(between(5, 30));
                surfaces.add(new Surface(
                        "wing", Role.WING, 0, 0, 0, 0, coin() ? wing : usual(span, chord), null, 0, tilt, null, null));
                tail(chord);
            }
            case 11 -> {
                double gap = between(0.2, 0.9) * chord;
                add("lower", Role.WING, 0, 0, any(span, chord));
                add("middle", Role.WING, between(-0.5, 0.5) * chord, gap, any(span * between(0.8, 1), chord));
                add(
                        "upper",
                        Role.WING,
                        between(-0.5, 0.5) * chord,
                        gap * between(1.6, 2.2),
                        any(span * between(0.8, 1.1), chord));
                tail(chord);
            }
            case 12 -> {
                add(
                        "foreplane",
                        Role.TAILPLANE,
                        0,
                        coin() ? 0 : between(-0.2, 0.3) * chord,
                        any(span * between(0.3, 0.7), chord * between(0.3, 0.7)));
                add("wing", Role.WING, between(0.9, 3) * chord, 0, any(span, chord));
            }
            case 13 -> {
                add("wing", Role.WING, 0, 0, any(span, chord));
                add(
                        "tail",
                        Role.TAILPLANE,
                        between(1.6, 3.5) * chord,
                        coin() ? 0 : between(-0.2, 0.3) * chord,
                        usual(span * between(1.02, 1.4), chord * between(0.4, 0.9)));
            }
            case 14 -> {
                double cut = between(0.1, 0.6) * span / 2;
                double shorter = coin() ? 1 : between(0.5, 0.9);
                add(
                        "middle",
                        Role.WING,
                        chord * (1 - shorter) * random.nextInt(2),
                        0,
                        Planforms.rectangle(2 * cut, chord * shorter));
                add(
                        "outer",
                        Role.WING,
                        0,
                        0,
                        List.of(
                                new Rib(cut, 0, chord, 0, 0),
                                new Rib(span / 2, between(0, 0.3) * chord, chord * between(0.4, 1), 0, 0)));
                tail(chord);
            }
            default -> twoWings(chord, between(0.08, 0.4), kinked(span, chord), any(span * between(0.8, 1), chord));
        }
        if (random.nextInt(4) == 0) {
            add("fin", Role.FIN, span, 0.02, Planforms.rectangle(0.08, 0.06));
        }
    }

    private void add(String name, Role role, double edge, double rise, List<Rib> ribs) {
        surfaces.add(Surface.symmetric(name, role, edge, rise, 0, 0, ribs));
    }

    private void oneWing(List<Rib> ribs, double chord, boolean withTail) {
        add("wing", Role.WING, 0, 0, ribs);
        if (withTail) {
            tail(chord);
        }
    }

    private void twoWings(double chord, double gapInChords, List<Rib> lower, List<Rib> upper) {
        add("lower", Role.WING, 0, 0, lower);
        add("upper", Role.WING, between(-0.9, 0.9) * chord, gapInChords * chord, upper);
        tail(chord);
    }

    private void tail(double chord) {
        double rise = coin() ? 0 : between(-0.1, 0.5) * chord;
        add(
                "tail",
                Role.TAILPLANE,
                between(2, 4) * Math.max(chord, span / 6),
                rise,
                any(span * between(0.35, 0.9), chord * between(0.4, 0.8)));
    }

    /** A tail at the wing's height, or so few millimetres off it that it lies within its wake's thickness of panels. */
    private void wakeTail(double chord) {
        double[] heights = {0, 0.0005, 0.002, 0.004, 0.008};
        double rise = heights[random.nextInt(heights.length)] * (coin() ? 1 : -1);
        add(
                "tail",
                Role.TAILPLANE,
                between(1.3, 3.5) * chord,
                rise,
                any(span * between(0.35, 0.99), chord * between(0.4, 0.8)));
    }

    private static double largest(List<Rib> ribs) {
        return ribs.stream().mapToDouble(r -> r.edgeAftM() + r.chordM()).max().orElse(0);
    }

    private List<Rib> any(double b, double c) {
        return switch (random.nextInt(5)) {
            case 0 -> kinked(b, c);
            case 1 -> swept(b, c, between(-30, 45));
            case 2 -> pointed(b, c);
            default -> usual(b, c);
        };
    }

    private List<Rib> usual(double b, double c) {
        double half = b / 2;
        return switch (random.nextInt(4)) {
            case 0 -> Planforms.rectangle(b, c);
            case 1 -> Planforms.taper(b, c, c * between(0.3, 1), between(0, 1));
            case 2 -> Planforms.roundedTips(b, c, between(0.1, 0.5) * half, between(0, 1));
            default ->
                List.of(
                        new Rib(0, 0, c, 0, 0),
                        new Rib(0.65 * half, 0, c * between(0.85, 1.1), 0.1 * half, 0),
                        new Rib(half, between(0, 0.4) * c, c * between(0.4, 0.8), 0.25 * half, 0));
        };
    }

    /** Two panels a side, each with a sweep of its own. */
    private List<Rib> kinked(double b, double c) {
        double half = b / 2;
        double at = between(0.2, 0.8);
        double inner = coin() ? 0 : Math.tan(Math.toRadians(between(-45, 45)));
        double outer = Math.tan(Math.toRadians((coin() ? 1 : -1) * between(30, 45)));
        double middle = inner * at * half;
        double rise = coin() ? 0 : between(0, 0.4);
        return List.of(
                new Rib(0, 0, c, 0, 0),
                new Rib(at * half, middle, c * between(0.7, 1), 0, 0),
                new Rib(half, middle + outer * (1 - at) * half, c * between(0.3, 0.8), rise * (1 - at) * half, 0));
    }

    private List<Rib> swept(double b, double c, double degrees) {
        double aft = Math.tan(Math.toRadians(degrees)) * b / 2;
        return List.of(new Rib(0, 0, c, 0, 0), new Rib(b / 2, aft, c * between(0.4, 1), 0, 0));
    }

    private List<Rib> pointed(double b, double c) {
        return switch (random.nextInt(3)) {
            case 0 -> Planforms.ellipse(b, 1.2 * c, between(0, 1));
            case 1 -> List.of(new Rib(0, 0, 1.5 * c, 0, 0), new Rib(b / 2, between(0, 1.5) * c, 0, 0, 0));
            default -> Planforms.taper(b, 1.4 * c, 0.05 * c, between(0, 1));
        };
    }
}
