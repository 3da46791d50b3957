package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;

/**
 * Random arrangements from a seed: one wing and tail (level with it or not), two equal or unequal staggered wings with small
 * and large gaps, tail ahead; planforms rectangular, tapered, swept, elliptic, rounded, bent; very low to very high aspect
 * ratios.
 */
final class Arrangements {

    private final Random random;
    private double span;
    private double chord;

    private Arrangements(long seed) {
        random = new Random(seed * 104729 + 5);
        random.nextDouble();
    }

    static Airframe of(long seed) {
        return new Arrangements(seed).airframe((int) (seed % 5));
    }

    private double between(double a, double b) {
        return a + (b - a) * random.nextDouble();
    }

    private boolean coin() {
        return random.nextBoolean();
    }

    private Airframe airframe(int kind) {
        boolean extreme = random.nextInt(5) == 0;
        double aspectRatio = extreme ? coin() ? between(0.8, 1.8) : between(10, 16) : between(2.5, 8);
        span = between(0.3, 0.5);
        chord = span / aspectRatio;
        List<Rib> wing = planform(span, chord);
        double tailSpan = span * between(0.35, 0.9);
        List<Rib> tail = planform(tailSpan, Math.min(chord, tailSpan / between(2, 5)));
        double arm = between(2, 4.5) * Math.max(chord, span / 5);
        List<Surface> surfaces = new ArrayList<>();
        switch (kind) {
            case 0 -> {
                surfaces.add(surface("wing", Role.WING, 0, 0, wing));
                double rise = coin() ? 0 : between(-0.05, 0.12) * span;
                surfaces.add(surface("tail", Role.TAILPLANE, arm, rise, tail));
            }
            case 1, 2 -> twoWings(surfaces, wing, tail, arm);
            case 3 -> {
                double rise = coin() ? 0 : between(-0.05, 0.1) * span;
                surfaces.add(surface("foreplane", Role.TAILPLANE, 0, rise, tail));
                surfaces.add(surface("wing", Role.WING, arm, 0, wing));
            }
            default -> {
                surfaces.add(surface("wing", Role.WING, 0, 0, wing));
                surfaces.add(surface("tail", Role.TAILPLANE, arm, 0, tail));
            }
        }
        List<MassItem> masses = new ArrayList<>();
        for (Surface s : surfaces) {
            masses.add(new MassItem(s.name(), between(2e-4, 1.2e-3), s.edgeAftM() + 0.4 * chord, s.riseM()));
        }
        masses.add(new MassItem("stick", between(1e-3, 2e-3), between(0.3, 0.7) * arm, 0));
        return new Airframe(surfaces, masses, null, new MotorPlace(between(1e-3, 2.5e-3), between(0.2, 0.6) * arm));
    }

    private void twoWings(List<Surface> surfaces, List<Rib> wing, List<Rib> tail, double arm) {
        double gap = random.nextInt(3) == 0 ? between(0.25, 0.5) * chord : between(0.6, 1.4) * chord;
        List<Rib> other = coin() ? wing : planform(span * between(0.75, 1.15), chord * between(0.75, 1.1));
        surfaces.add(surface("lower", Role.WING, 0, 0, wing));
        surfaces.add(surface("upper", Role.WING, between(-0.6, 0.5) * chord, gap, other));
        double[] heights = {0, gap / 2, gap, gap * 1.4};
        surfaces.add(surface("tail", Role.TAILPLANE, arm, heights[random.nextInt(4)], tail));
    }

    private static Surface surface(String name, Role role, double edge, double rise, List<Rib> ribs) {
        return Surface.symmetric(name, role, edge, rise, 0, 0, ribs);
    }

    private List<Rib> planform(double b, double c) {
        double half = b / 2;
        switch (random.nextInt(7)) {
            case 0:
                return Planforms.rectangle(b, c);
            case 1:
                return Planforms.taper(b, c, c * between(0.3, 1), between(0, 1));
            case 2:
                double sweep = between(-0.3, 0.8) * half;
                return List.of(
                        new Rib(0, 0, c, 0, 0),
                        new Rib(half, sweep, c * between(0.4, 1), between(-0.05, 0.15) * half, 0));
            case 3:
                return Planforms.ellipse(b, 1.2 * c, between(0, 1));
            case 4:
                return Planforms.roundedTips(b, c, between(0.1, 0.5) * half, between(0, 1));
            case 5:
                double k = between(0.3, 0.8);
                return List.of(
                        new Rib(0, 0, c, 0, 0),
                        new Rib(k * half, between(-0.1, 0.2) * c, c * between(0.85, 1.1), 0, 0),
                        new Rib(half, between(0, 0.5) * c, c * between(0.4, 0.8), (1 - k) * half * between(0, 0.6), 0));
            default:
                double panel = between(0.3, 0.6) * half;
                double dihedral = between(0, 0.3);
                return List.of(
                        new Rib(0, 0, c, 0, 0),
                        new Rib(panel, 0, c, panel * dihedral, 0),
                        new Rib(0.85 * half, 0, 0.9 * c, 0.85 * half * dihedral, 0),
                        new Rib(half, 0.2 * c, 0.5 * c, half * dihedral, 0));
        }
    }
}
