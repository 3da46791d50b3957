package org.rafterbook.stability;

import org.rafterbook.airframe.Surface;

/**
 * The camber line that stands for a surface's section: a parabola for the moment, and a turn for what is left of the angle of
 * zero lift. Thin-aerofoil theory: a parabola of height f over chord has zero lift at -2 f and a moment coefficient about
 * the quarter chord of -pi f.
 *
 * @param parabola height over chord
 * @param turnRad further turn, leading edge up, rad
 */
record SectionCamber(double parabola, double turnRad) {

    static SectionCamber of(Surface surface) {
        Double moment = surface.cmQuarter();
        Double zeroLift = surface.zeroLiftRad();
        double parabola = moment == null ? surface.camber() : -moment / Math.PI;
        double wanted = zeroLift == null ? -2 * surface.camber() : zeroLift;
        return new SectionCamber(parabola, -(wanted + 2 * parabola));
    }

    /** Angle of zero lift to the chord, rad. */
    double zeroLiftRad() {
        return -turnRad - 2 * parabola;
    }
}
