package org.rafterbook.stability;

import org.hipparchus.complex.Complex;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The slow speed-and-trim mode of a light model: how fast an upset of trim dies away or grows. Standard linearised
 * longitudinal equations in forward and downward speed, pitch rate and pitch angle, with downwash lag and the added mass of
 * the surfaces; the mode is the root nearest zero.
 *
 * @param ratePerS the root, 1/s; negative dies away
 */
public record SlowMode(double ratePerS) {

    private static final double GRAVITY = 9.80665;

    /** Seconds in which an upset halves or doubles. */
    public double seconds() {
        return Math.log(2) / Math.abs(ratePerS);
    }

    /** True where an upset grows. */
    public boolean grows() {
        return ratePerS > 0;
    }

    /**
     * What the equations need; derivatives about the balance point, angles in radians, pitch rate as qc/2V.
     *
     * @param areaM2 wing area
     * @param chordM mean chord
     * @param lift lift coefficient
     * @param drag drag coefficient
     * @param dragPerAngle its slope
     * @param liftPerAngle lift slope
     * @param momentPerAngle moment slope
     * @param liftPerPitch lift per pitch rate
     * @param momentPerPitch moment per pitch rate, pitch damping
     * @param lagLift lift per qc/2V of the tail times the downwash gradient, 2 a_t V_H eps
     * @param lagMoment moment of the same, 2 a_t V_H (l_t/c) eps
     * @param addedMassKg added mass of the surfaces
     * @param addedInertiaKgM2 its moment of inertia about the balance point
     */
    record Inputs(
            double massKg,
            double inertiaKgM2,
            double airDensity,
            double areaM2,
            double chordM,
            double lift,
            double drag,
            double dragPerAngle,
            double liftPerAngle,
            double momentPerAngle,
            double liftPerPitch,
            double momentPerPitch,
            double lagLift,
            double lagMoment,
            double addedMassKg,
            double addedInertiaKgM2) {}

    static SlowMode of(Inputs in) {
        double s = in.areaM2;
        double c = in.chordM;
        double v = Math.sqrt(2 * in.massKg * GRAVITY / (in.airDensity * s * in.lift));
        double full = in.airDensity * v * s;
        double half = full / 2;
        double xu = -full * in.drag;
        double xw = half * (in.lift - in.dragPerAngle);
        double zu = -full * in.lift;
        double zw = -half * (in.liftPerAngle + in.drag);
        double zq = -full * c * in.liftPerPitch / 4;
        double mw = half * c * in.momentPerAngle;
        double mq = full * c * c * in.momentPerPitch / 4;
        double zwDot = -in.airDensity * s * c * in.lagLift / 4;
        double mwDot = -in.airDensity * s * c * c * in.lagMoment / 4;
        RealMatrix inertia = new Array2DRowRealMatrix(new double[][] {
            {in.massKg, 0, 0, 0},
            {0, in.massKg + in.addedMassKg - zwDot, 0, 0},
            {0, -mwDot, in.inertiaKgM2 + in.addedInertiaKgM2, 0},
            {0, 0, 0, 1}
        });
        RealMatrix forces = new Array2DRowRealMatrix(new double[][] {
            {xu, xw, 0, -in.massKg * GRAVITY}, {zu, zw, in.massKg * v + zq, 0}, {0, mw, mq, 0}, {0, 0, 1, 0}
        });
        RealMatrix system = new LUDecomposition(inertia).getSolver().solve(forces);
        Complex slowest = Complex.INF;
        for (Complex root : new EigenDecompositionNonSymmetric(system).getEigenvalues()) {
            if (root.norm() < slowest.norm()) {
                slowest = root;
            }
        }
        return new SlowMode(slowest.getRealPart());
    }
}
