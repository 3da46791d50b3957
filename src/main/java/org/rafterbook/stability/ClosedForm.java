package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Planform;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;

/**
 * A neutral point from closed formulas alone, shown beside the lattice: Jones's slopes, one horseshoe of span pi b/4 per
 * wing, arms from quarter chords; two wings with Prandtl's interference factor and the plates' factor for the gap.
 *
 * <p>One wing: a = 2 pi A/(A E + 2). Two wings, s_i = S_i/S: 1/a = [sum s_i (E_i - 1) + 1/B(G/c)]/(2 pi) + (S/pi)
 * [s1^2/b1^2 + 2 sigma s1 s2/(b1 b2) + s2^2/b2^2]. With r = a_t (S_t/S)(1 - eps): x = x_c/4 + l r/(a + r).
 */
public final class ClosedForm {

    /** What this form is called on screens and in answers. */
    public static final String NAME = "Jones slopes, one horseshoe per wing";

    private ClosedForm() {}

    /**
     * The closed form's answer, or the reason why there is none.
     *
     * @param neutralPointM neutral point aft of the origin, m; null where there is no closed form
     * @param figures what it was made of; null where there is no closed form
     * @param reason why there is no closed form; null where there is one
     * @param error what its error against a lattice is known to be; null where there is no closed form
     */
    public record Answer(
            @Nullable Double neutralPointM,
            @Nullable Figures figures,
            @Nullable String reason,
            @Nullable String error) {}

    /**
     * The figures between geometry and answer.
     *
     * @param wingSlope lift slope of all wings on their total area, per rad
     * @param tailSlope lift slope of the tailplane on its own area, per rad
     * @param downwash downwash gradient at the tailplane
     * @param interference Prandtl's sigma; 0 for one wing
     * @param effectiveAspectRatio aspect ratio of the one wing of equal induced drag
     * @param plateInterference the factor B for the gap; 1 for one wing
     */
    public record Figures(
            double wingSlope,
            double tailSlope,
            double downwash,
            double interference,
            double effectiveAspectRatio,
            double plateInterference) {}

    /** The neutral point of an airframe whose geometry has no problem. */
    public static Answer of(Airframe airframe) {
        WingGeometry geometry = WingGeometry.of(airframe);
        String reason = whyNot(geometry);
        if (reason != null) {
            return new Answer(null, null, reason, null);
        }
        List<Planform> wings = new ArrayList<>();
        for (Surface wing : geometry.wings()) {
            wings.add(Planform.of(wing));
        }
        Planform tail = Planform.of(geometry.tails().get(0));
        double area = geometry.areaM2();
        double sigma = 0;
        double plates = 1;
        double slope;
        double effective;
        if (wings.size() == 1) {
            Planform wing = wings.get(0);
            effective = wing.aspectRatio();
            slope = StabilityFormulas.jonesSlope(effective, wing.semiperimeterPerSpan());
        } else {
            Planform one = wings.get(0);
            Planform two = wings.get(1);
            double gap = Math.abs(two.heightM() - one.heightM());
            sigma = StabilityFormulas.interference(one.spanM(), two.spanM(), gap);
            plates = StabilityFormulas.plateInterference(gap / geometry.meanChordM());
            double s1 = one.areaM2() / area;
            double s2 = two.areaM2() / area;
            double edges = s1 * (one.semiperimeterPerSpan() - 1) + s2 * (two.semiperimeterPerSpan() - 1);
            double b1 = one.spanM();
            double b2 = two.spanM();
            double wake = s1 * s1 / (b1 * b1) + 2 * sigma * s1 * s2 / (b1 * b2) + s2 * s2 / (b2 * b2);
            effective = 1 / (area * wake);
            slope = 1 / ((edges + 1 / plates) / (2 * Math.PI) + area / Math.PI * wake);
        }
        double tailSlope = StabilityFormulas.jonesSlope(tail.aspectRatio(), tail.semiperimeterPerSpan());
        double downwash = 0;
        for (Planform wing : wings) {
            downwash += StabilityFormulas.horseshoeDownwash(
                    slope,
                    wing.spanM(),
                    wing.aspectRatio(),
                    tail.quarterChordM() - wing.quarterChordM(),
                    tail.heightM() - wing.heightM());
        }
        double centre = geometry.quarterChordM();
        double neutralPoint = centre
                + StabilityFormulas.neutralPointBehindWing(
                        tail.quarterChordM() - centre, slope, tailSlope, tail.areaM2() / area, downwash, 1);
        return new Answer(
                neutralPoint,
                new Figures(slope, tailSlope, downwash, sigma, effective, plates),
                null,
                error(wings, tail, geometry.meanChordM()));
    }

    private static @Nullable String whyNot(WingGeometry geometry) {
        if (geometry.wings().isEmpty() || !(geometry.areaM2() > 0)) {
            return "No closed form: there is no wing.";
        }
        if (geometry.wings().size() == 2
                && Perturbation.alongside(
                        geometry.wings().get(0), geometry.wings().get(1))) {
            return "No closed form for wings side by side: it covers one wing or two above each other.";
        }
        if (geometry.wings().size() > 2) {
            return "No closed form for " + geometry.wings().size() + " wings: it covers one or two.";
        }
        if (geometry.tails().isEmpty() || !(geometry.tailAreaM2() > 0)) {
            return "No closed form without a tailplane.";
        }
        if (geometry.tails().size() > 1) {
            return "No closed form for " + geometry.tails().size() + " tailplanes: it covers one.";
        }
        double tail = Planform.of(geometry.tails().get(0)).quarterChordM();
        for (Surface wing : geometry.wings()) {
            if (tail <= Planform.of(wing).quarterChordM()) {
                return "No closed form with the tailplane ahead of \"" + wing.name() + "\".";
            }
        }
        if (geometry.wings().size() == 2) {
            Planform one = Planform.of(geometry.wings().get(0));
            Planform two = Planform.of(geometry.wings().get(1));
            if (Math.abs(one.quarterChordM() - two.quarterChordM()) >= geometry.meanChordM()) {
                return "No closed form for two wings one behind the other: they stand a chord or more apart along the"
                        + " stick.";
            }
        }
        return null;
    }

    /** Errors found against lattices of 20 by 10 panels per half wing, computed for this project. */
    private static String error(List<Planform> wings, Planform tail, double chordM) {
        if (wings.size() == 2) {
            return "Against the lattice this form read -4 to +2 mm for two wings.";
        }
        double above = Math.abs(tail.heightM() - wings.get(0).heightM());
        return above < 0.1 * chordM
                ? "Against the lattice this form read 9 to 17 mm too far aft with the tailplane level with the wing:"
                        + " the unsafe side."
                : "Against the lattice this form read 3 to 4 % of the chord too far aft with the tailplane above the"
                        + " wing: the unsafe side.";
    }
}
