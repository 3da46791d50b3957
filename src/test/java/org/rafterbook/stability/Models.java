package org.rafterbook.stability;

import java.util.List;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;

/** Arrangements of the check values, lengths in millimetres. */
final class Models {

    private Models() {}

    static Airframe airframe(Surface... surfaces) {
        return new Airframe(List.of(surfaces), List.of(), null, null);
    }

    /** A rectangle by its root leading edge. */
    static Surface rectangle(String name, Role role, double edgeMm, double riseMm, double spanMm, double chordMm) {
        return surface(name, role, edgeMm, riseMm, Planforms.rectangle(spanMm / 1000, chordMm / 1000));
    }

    static Surface surface(String name, Role role, double edgeMm, double riseMm, List<Rib> ribs) {
        return Surface.symmetric(name, role, edgeMm / 1000, riseMm / 1000, 0, 0, ribs);
    }

    static Surface wing(double spanMm, double chordMm) {
        return rectangle("wing", Role.WING, 0, 0, spanMm, chordMm);
    }

    /** A rectangular tail whose quarter chord lies behind the quarter chord of a wing of that chord at the origin. */
    static Surface tail(double armMm, double wingChordMm, double riseMm, double spanMm, double chordMm) {
        return rectangle("tail", Role.TAILPLANE, wingChordMm / 4 + armMm - chordMm / 4, riseMm, spanMm, chordMm);
    }

    static GeometrySolution solve(Surface... surfaces) {
        return solve(LatticeSettings.DEFAULT, surfaces);
    }

    static GeometrySolution solve(LatticeSettings settings, Surface... surfaces) {
        return GeometrySolution.of(airframe(surfaces), settings);
    }

    /** The model of rows MM-02 and TR-01: wing 450 x 155.6, tail 300 x 90 at +30, arm 330. */
    static Airframe damped() {
        return airframe(wing(450, 155.6), tail(330, 155.6, 30, 300, 90));
    }
}
