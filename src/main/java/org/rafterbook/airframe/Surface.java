package org.rafterbook.airframe;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A lifting surface. Axes: x aft from the propeller bearing's face, y to the flyer's left standing behind the model, z
 * up from the stick's centre line.
 *
 * @param name unique within the model
 * @param edgeAftM root leading edge aft of the origin, m
 * @param riseM root leading edge above the stick's centre line, m
 * @param incidenceRad root chord to the stick, leading edge up positive, rad
 * @param camber height of the camber line over the chord, fraction (0.04 for 4 %)
 * @param ribs ribs from the middle outward; of both halves where {@code ribsLeft} is null, else of the right half
 * @param ribsLeft ribs of the left half where it differs
 * @param offsetLeftM middle of the surface to the left of the stick, m
 * @param tiltRad rotation about the stick's axis, left tip up positive, rad
 * @param zeroLiftRad angle of zero lift given by the flyer instead of the camber's, rad
 * @param cmQuarter moment coefficient about the quarter chord given by the flyer instead of the camber's
 */
public record Surface(
        String name,
        Role role,
        double edgeAftM,
        double riseM,
        double incidenceRad,
        double camber,
        List<Rib> ribs,
        @Nullable List<Rib> ribsLeft,
        double offsetLeftM,
        double tiltRad,
        @Nullable Double zeroLiftRad,
        @Nullable Double cmQuarter) {

    public Surface {
        ribs = List.copyOf(ribs);
        ribsLeft = ribsLeft == null ? null : List.copyOf(ribsLeft);
    }

    /** A surface with both halves alike, on the stick, level, with the camber's own zero-lift angle and moment. */
    public static Surface symmetric(
            String name, Role role, double edgeAftM, double riseM, double incidenceRad, double camber, List<Rib> ribs) {
        return new Surface(name, role, edgeAftM, riseM, incidenceRad, camber, ribs, null, 0, 0, null, null);
    }

    /** True where the left half mirrors the right one. */
    public boolean isSymmetric() {
        return ribsLeft == null && offsetLeftM == 0 && tiltRad == 0;
    }

    /** The ribs of the left half, from the middle outward. */
    public List<Rib> leftRibs() {
        return ribsLeft == null ? ribs : ribsLeft;
    }

    /** The same surface under another name. */
    public Surface named(String other) {
        return new Surface(
                other,
                role,
                edgeAftM,
                riseM,
                incidenceRad,
                camber,
                ribs,
                ribsLeft,
                offsetLeftM,
                tiltRad,
                zeroLiftRad,
                cmQuarter);
    }
}
