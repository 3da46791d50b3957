package org.rafterbook.stability;

/**
 * A propeller as a fin at the nose (Ribner, NACA TR-819 and TR-820: it acts as the projected side area of its blades at an
 * aspect ratio of about 8 in the air it speeds up; the inflow function from memory of the source). Always destabilising with
 * the disc ahead. Upwash ahead of the wing is left out.
 *
 * @param discAftM disc aft of the origin, m (0 or little less for a tractor)
 * @param diameterM diameter, m
 * @param bladeWidthM mean width of a blade, m
 * @param pitchM geometric pitch, m
 * @param blades number of blades
 */
public record PropellerTerm(double discAftM, double diameterM, double bladeWidthM, double pitchM, int blades) {

    /** Blades begin outside of this share of the radius. */
    private static final double ROOT = 0.15;

    /** Projected side area, averaged over a turn, m^2. */
    public double sideAreaM2() {
        double k = 2 * Math.PI / pitchM;
        double radius = diameterM / 2;
        return blades / 2.0 * bladeWidthM * (asinh(k * radius) - asinh(k * ROOT * radius)) / k;
    }

    /**
     * Slope of the normal force times area, per rad, m^2.
     *
     * @param thrustArea thrust over dynamic pressure, m^2
     */
    public double slopeAreaM2(double thrustArea) {
        double thrustCoefficient = thrustArea / (Math.PI / 4 * diameterM * diameterM);
        double inflow = (Math.sqrt(1 + thrustCoefficient) - 1) / 2;
        double wake = (1 + 2 * inflow) * (1 + 2 * inflow);
        double augmented = (1 + inflow) * ((1 + inflow) + wake) / (1 + wake);
        return 2 * Math.PI / (1 + 2 / 8.0) * sideAreaM2() * augmented;
    }

    /** How far the neutral point moves, m; negative is forward. */
    public double shiftM(double neutralPointM, double slopeAreaOfModelM2, double thrustArea) {
        double slope = slopeAreaM2(thrustArea);
        return -(neutralPointM - discAftM) * slope / (slopeAreaOfModelM2 + slope);
    }

    private static double asinh(double x) {
        return Math.log(x + Math.sqrt(x * x + 1));
    }
}
