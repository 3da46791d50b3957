package org.rafterbook.airframe;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Changed copies of an airframe; a mass that carries a surface's name goes along when the surface is moved. A measured
 * balance is copied as it was measured: {@link Balance#carried} moves it by computation.
 */
public final class AirframeEdits {

    private AirframeEdits() {}

    /** The airframe with one surface's root leading edge at another place; its mass, if any, moves by the same way. */
    public static Airframe moved(Airframe airframe, String surfaceName, double edgeAftM, double riseM) {
        double aft = 0;
        double up = 0;
        for (Surface surface : airframe.surfaces()) {
            if (surface.name().equals(surfaceName)) {
                aft = edgeAftM - surface.edgeAftM();
                up = riseM - surface.riseM();
            }
        }
        List<MassItem> masses = new ArrayList<>();
        for (MassItem mass : airframe.masses()) {
            boolean along = mass.name().equals(surfaceName);
            masses.add(along ? new MassItem(mass.name(), mass.massKg(), mass.aftM() + aft, mass.riseM() + up) : mass);
        }
        Airframe placed = withSurface(airframe, surfaceName, s -> placed(s, edgeAftM, riseM));
        return new Airframe(placed.surfaces(), masses, airframe.measuredBalanceM(), airframe.motor());
    }

    /** The airframe with one surface turned to another incidence; neither masses nor influence geometry change. */
    public static Airframe turned(Airframe airframe, String surfaceName, double incidenceRad) {
        return withSurface(
                airframe,
                surfaceName,
                s -> new Surface(
                        s.name(),
                        s.role(),
                        s.edgeAftM(),
                        s.riseM(),
                        incidenceRad,
                        s.camber(),
                        s.ribs(),
                        s.ribsLeft(),
                        s.offsetLeftM(),
                        s.tiltRad(),
                        s.zeroLiftRad(),
                        s.cmQuarter()));
    }

    /** The airframe with one surface scaled in span and chord about its root leading edge; its mass is kept. */
    public static Airframe scaled(Airframe airframe, String surfaceName, double spanFactor, double chordFactor) {
        return withSurface(airframe, surfaceName, s -> scaled(s, spanFactor, chordFactor));
    }

    /** The airframe with one more mass. */
    public static Airframe withMass(Airframe airframe, MassItem mass) {
        List<MassItem> masses = new ArrayList<>(airframe.masses());
        masses.add(mass);
        return new Airframe(airframe.surfaces(), masses, airframe.measuredBalanceM(), airframe.motor());
    }

    /** The airframe with one surface replaced; masses stay where they are. */
    public static Airframe withSurface(Airframe airframe, String surfaceName, UnaryOperator<Surface> change) {
        List<Surface> surfaces = airframe.surfaces().stream()
                .map(s -> s.name().equals(surfaceName) ? change.apply(s) : s)
                .toList();
        return new Airframe(surfaces, airframe.masses(), airframe.measuredBalanceM(), airframe.motor());
    }

    private static Surface placed(Surface s, double edgeAftM, double riseM) {
        return new Surface(
                s.name(),
                s.role(),
                edgeAftM,
                riseM,
                s.incidenceRad(),
                s.camber(),
                s.ribs(),
                s.ribsLeft(),
                s.offsetLeftM(),
                s.tiltRad(),
                s.zeroLiftRad(),
                s.cmQuarter());
    }

    private static Surface scaled(Surface s, double spanFactor, double chordFactor) {
        UnaryOperator<Rib> scale = r -> new Rib(
                r.outM() * spanFactor,
                r.edgeAftM() * chordFactor,
                r.chordM() * chordFactor,
                r.riseM() * spanFactor,
                r.twistRad());
        List<Rib> left = s.ribsLeft();
        return new Surface(
                s.name(),
                s.role(),
                s.edgeAftM(),
                s.riseM(),
                s.incidenceRad(),
                s.camber(),
                s.ribs().stream().map(scale).toList(),
                left == null ? null : left.stream().map(scale).toList(),
                s.offsetLeftM(),
                s.tiltRad(),
                s.zeroLiftRad(),
                s.cmQuarter());
    }
}
