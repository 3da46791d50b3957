package org.rafterbook.stability;

import java.util.Locale;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.stability.LatticeSettings.Spacing;

/**
 * The default lattice against the same code's runs at twice and four times the panels in both directions, extrapolated;
 * where those would take too long, at twice the panels extrapolated along the chord.
 */
final class Converged {

    private Converged() {}

    /**
     * How far off the default lattice is, each over what is allowed: 0.3 mm or 0.3 % of the mean chord for the neutral
     * point, 0.4 % of the slope, 0.004 of each share.
     *
     * @param along panels along the chord of its coarsest lattice
     * @param unknowns of its largest
     */
    record Error(double neutralPoint, double slope, double share, int along, int unknowns) {

        double worst() {
            return Math.max(neutralPoint, Math.max(slope, share));
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s neutral point %.2f, slope %.2f, share %.2f",
                    worst() > 1 ? "!!" : "  ",
                    neutralPoint,
                    slope,
                    share);
        }
    }

    /** Unknowns beyond which four times the panels take too long. */
    private static final int MANY = 500;

    static Error error(Airframe airframe) {
        GeometrySolution shown = GeometrySolution.of(airframe, LatticeSettings.DEFAULT);
        if (shown.size() > MANY) {
            GeometrySolution finer = finer(airframe, shown, 2, true);
            return error(shown, finer, finer, 0);
        }
        return byExtrapolation(airframe);
    }

    static Error byExtrapolation(Airframe airframe) {
        GeometrySolution shown = GeometrySolution.of(airframe, LatticeSettings.DEFAULT);
        return error(shown, finer(airframe, shown, 2, false), finer(airframe, shown, 4, false), 1.0 / 3);
    }

    private static Error error(GeometrySolution shown, GeometrySolution coarse, GeometrySolution fine, double beyond) {
        double neutral = extrapolated(coarse.neutralPointM(), fine.neutralPointM(), beyond);
        double slope = extrapolated(coarse.liftSlopePerRad(), fine.liftSlopePerRad(), beyond);
        double share = 0;
        for (String name : shown.liftShare().keySet()) {
            double converged =
                    extrapolated(coarse.liftShare().get(name), fine.liftShare().get(name), beyond);
            share = Math.max(share, Math.abs(shown.liftShare().get(name) - converged));
        }
        return new Error(
                Math.abs(shown.neutralPointM() - neutral)
                        / Math.max(3e-4, 0.003 * shown.wings().meanChordM()),
                Math.abs(shown.liftSlopePerRad() / slope - 1) / 0.004,
                share / 0.004,
                shown.chordwise(),
                shown.size());
    }

    private static GeometrySolution finer(Airframe airframe, GeometrySolution shown, int times, boolean extrapolated) {
        int across = LatticeSettings.DEFAULT.spanwise();
        return GeometrySolution.of(
                airframe, new LatticeSettings(times * across, times * shown.chordwise(), extrapolated, Spacing.COSINE));
    }

    private static double extrapolated(double coarse, double fine, double beyond) {
        return fine + beyond * (fine - coarse);
    }
}
