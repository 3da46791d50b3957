package org.rafterbook.stability;

/**
 * The textbook formulas of longitudinal stability and of stacked wings. Angles in radians and slopes per radian unless a
 * caller keeps to degrees throughout; h is a place along the chord over the chord.
 */
public final class StabilityFormulas {

    private StabilityFormulas() {}

    /**
     * Neutral point aft of the wing's aerodynamic centre, in the unit of the arm: l r/(a + r) with r = eta a_t (S_t/S)
     * (1 - eps_a). Exact with the arm between aerodynamic centres and the tail's lift in the total slope (Etkin, Dynamics
     * of Flight).
     */
    public static double neutralPointBehindWing(
            double arm, double wingSlope, double tailSlope, double areaRatio, double downwash, double efficiency) {
        double r = efficiency * tailSlope * areaRatio * (1 - downwash);
        return arm * r / (wingSlope + r);
    }

    /**
     * Neutral point as a fraction of the chord: h_ac + eta V a_t/a (1 - eps_a). With V from the arm between aerodynamic
     * centres and a the total slope this equals {@link #neutralPointBehindWing}; with V from the balance point and a the
     * wing's slope it is the variant of Anderson, Introduction to Flight, ch. 7.
     */
    public static double neutralPoint(
            double wingCentre, double tailVolume, double tailSlope, double slope, double downwash, double efficiency) {
        return wingCentre + efficiency * tailVolume * tailSlope / slope * (1 - downwash);
    }

    /** Tail volume: tail area times arm over wing area times chord. Which arm is the caller's to say. */
    public static double tailVolume(double tailArea, double arm, double wingArea, double chord) {
        return tailArea * arm / (wingArea * chord);
    }

    /** Static margin as a fraction of the chord: neutral point less balance point. */
    public static double staticMargin(double neutralPoint, double balancePoint) {
        return neutralPoint - balancePoint;
    }

    /**
     * Lift slope of a flat wing by R. T. Jones's edge correction, 2 pi A/(A E + 2), E being semiperimeter over span
     * (NACA TN-817, 1941; closed form for a rectangle 2 pi A/(A + 3)).
     */
    public static double jonesSlope(double aspectRatio, double semiperimeterPerSpan) {
        return 2 * Math.PI * aspectRatio / (aspectRatio * semiperimeterPerSpan + 2);
    }

    /**
     * Prandtl's interference factor of two wings with elliptic loads (NACA TR-116), computed from its meaning: (b2/b1)
     * times the mean over wing 2, weighted with its load, of Re[1 - zeta/sqrt(zeta^2 - (b1/2)^2)], zeta = y + i gap.
     *
     * @param span1 span of one wing, any unit, above 0
     * @param span2 span of the other
     * @param gap vertical distance, 0 or more
     */
    public static double interference(double span1, double span2, double gap) {
        // The integrand is gentlest when the wider wing's field is averaged over the narrower wing.
        double wide = Math.max(span1, span2);
        double narrow = Math.min(span1, span2);
        int n = 400;
        double sum = 0;
        double weights = 0;
        for (int k = 0; k < n; k++) {
            double theta = Math.PI * (k + 0.5) / n;
            double weight = Math.sin(theta) * Math.sin(theta);
            sum += weight * farDownwash(narrow / 2 * Math.cos(theta), gap, wide / 2);
            weights += weight;
        }
        return narrow / wide * sum / weights;
    }

    /** Downwash far behind an elliptically loaded wing over that at the wing's own wake. */
    private static double farDownwash(double y, double z, double half) {
        // zeta^2 - half^2 as a complex number, its root in the half plane that goes with zeta at infinity.
        double re = y * y - z * z - half * half;
        double im = 2 * y * z;
        double size = Math.hypot(re, im);
        double rootRe = Math.sqrt(Math.max(0, (size + re) / 2));
        double rootIm = Math.sqrt(Math.max(0, (size - re) / 2));
        if (y < 0) {
            rootRe = -rootRe;
        }
        double square = rootRe * rootRe + rootIm * rootIm;
        return square == 0 ? 1 : 1 - (y * rootRe + z * rootIm) / square;
    }

    /**
     * Lift of each of two infinite parallel plates over that of a single one, 1/(1 + 0.25/((G/c)^2 + 0.46)): a fit to the
     * exact two-dimensional solution, within 0.2 % from G/c = 0.75 up and 1.3 % from 0.5 up (fitted for this project).
     */
    public static double plateInterference(double gapPerChord) {
        return 1 / (1 + 0.25 / (gapPerChord * gapPerChord + 0.46));
    }

    /**
     * Downwash gradient of one wing at a point, from one horseshoe vortex of span pi b/4 with the centre circulation of
     * an elliptic load (the simple horseshoe of Phillips et al., J. Aircraft 39, 2002).
     *
     * @param slope lift slope of the wing on its own area, per rad
     * @param span its span, m
     * @param aspectRatio its own aspect ratio
     * @param aft the point's distance behind the wing's quarter chord, m
     * @param above its height above the wing, m
     */
    public static double horseshoeDownwash(double slope, double span, double aspectRatio, double aft, double above) {
        double s = Math.PI * span / 8;
        double circulation = 2 * slope * span / (aspectRatio * Math.PI);
        double r = Math.sqrt(aft * aft + s * s + above * above);
        return circulation
                / (2 * Math.PI)
                * (s / (s * s + above * above) * (1 + aft / r) + aft / (aft * aft + above * above) * s / r);
    }
}
