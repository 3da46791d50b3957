package org.rafterbook.power;

/**
 * Length and mass of a rubber loop. The linear density of the strip and that of the loop differ by two; every name here
 * says which is meant.
 *
 * <p>A strip of length s tied into a loop has the loop length L = s / 2. Mass is weighed, never computed from the width:
 * densities implied by published motors scatter by a tenth. The published table of breaking turns by strip density (rows C9,
 * C11 and C13 of the reference checks) is read through it.
 */
public final class LoopGeometry {

    private LoopGeometry() {}

    /** Length of the strip that is tied into a loop, m. */
    public static double stripLengthM(double loopLengthM) {
        return 2 * loopLengthM;
    }

    /** Mass per length of the single strip, kg/m: m / (2 L). */
    public static double stripDensityKgPerM(double massKg, double loopLengthM) {
        return massKg / (2 * loopLengthM);
    }

    /** Mass per length of the loop's two strands together, kg/m: m / L. */
    public static double loopDensityKgPerM(double massKg, double loopLengthM) {
        return massKg / loopLengthM;
    }

    /** Length of the loop that a mass of strip makes, m: m / (2 λ), λ the linear density of the strip, kg/m. */
    public static double loopLengthM(double massKg, double stripDensityKgPerM) {
        return massKg / (2 * stripDensityKgPerM);
    }
}
