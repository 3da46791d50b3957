package org.rafterbook.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeEdits;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.Surface;

/**
 * A change of one surface or one mass that can be laid on every version that carries what it changes. What a setting
 * chooses stays each version's own, unless the flyer changed just that and the version stands at the value changed.
 */
sealed interface AirframeEdit {

    /** Name of the surface or mass concerned. */
    String item();

    /** True where the airframe holds what is changed, or lacks what is added. */
    boolean carriedBy(Airframe airframe, Set<SheetPath.Key> tied);

    /** The airframe with the change, which it must carry. */
    Airframe laidOn(Airframe airframe, Set<SheetPath.Key> tied);

    /** What is changed, by itself; empty where something is added. */
    Airframe was();

    /** What it is changed to, by itself; empty where it is taken away. */
    Airframe becomes();

    /** What undo will say. */
    default String why(boolean added, boolean gone) {
        return item() + (added ? " added" : gone ? " taken away" : " changed");
    }

    /** Another surface in the place of one; null before adds it, null after takes it away. */
    record OfSurface(@Nullable Surface before, @Nullable Surface after) implements AirframeEdit {

        @Override
        public String item() {
            return before != null ? before.name() : after != null ? after.name() : "";
        }

        @Override
        public boolean carriedBy(Airframe airframe, Set<SheetPath.Key> tied) {
            Surface there = surface(airframe, item());
            if (before == null || there == null) {
                return before == null && there == null;
            }
            return blank(there, tied).equals(blank(before, tied));
        }

        @Override
        public Airframe was() {
            return alone(before);
        }

        @Override
        public Airframe becomes() {
            return alone(after);
        }

        @Override
        public Airframe laidOn(Airframe airframe, Set<SheetPath.Key> tied) {
            Surface then = surface(airframe, item());
            if (after == null) {
                return with(
                        airframe,
                        airframe.surfaces().stream()
                                .filter(s -> !s.name().equals(item()))
                                .toList(),
                        airframe.masses());
            }
            if (then == null || before == null) {
                List<Surface> surfaces = new ArrayList<>(airframe.surfaces());
                surfaces.add(after);
                return with(airframe, surfaces, airframe.masses());
            }
            Airframe set = AirframeEdits.withSurface(airframe, item(), s -> after);
            for (SheetPath.Key key : tied) {
                SheetPath path = new SheetPath(item(), key);
                Airframe asBefore = alone(before);
                Airframe asAfter = alone(after);
                if (path.isIn(airframe) && path.isIn(set) && path.isIn(asBefore)) {
                    double own = path.read(airframe);
                    boolean changed = path.read(asBefore) != path.read(asAfter);
                    set = path.set(set, changed && own == path.read(asBefore) ? path.read(asAfter) : own);
                }
            }
            Surface now = Objects.requireNonNull(surface(set, item()));
            double aft = now.edgeAftM() - then.edgeAftM();
            double up = now.riseM() - then.riseM();
            List<MassItem> masses = airframe.masses().stream()
                    .map(m -> m.name().equals(item())
                            ? new MassItem(m.name(), m.massKg(), m.aftM() + aft, m.riseM() + up)
                            : m)
                    .toList();
            return with(airframe, set.surfaces(), masses);
        }

        private static Airframe alone(@Nullable Surface surface) {
            return new Airframe(surface == null ? List.of() : List.of(surface), List.of(), null, null);
        }

        /** The surface without what settings choose. */
        private static Surface blank(Surface s, Set<SheetPath.Key> tied) {
            boolean size = tied.contains(SheetPath.Key.SPAN) || tied.contains(SheetPath.Key.CHORD);
            return new Surface(
                    s.name(),
                    s.role(),
                    tied.contains(SheetPath.Key.EDGE_AFT) ? 0 : s.edgeAftM(),
                    tied.contains(SheetPath.Key.RISE) ? 0 : s.riseM(),
                    tied.contains(SheetPath.Key.INCIDENCE) ? 0 : s.incidenceRad(),
                    tied.contains(SheetPath.Key.CAMBER) ? 0 : s.camber(),
                    size ? List.<Rib>of() : s.ribs(),
                    size ? null : s.ribsLeft(),
                    tied.contains(SheetPath.Key.OFFSET_LEFT) ? 0 : s.offsetLeftM(),
                    tied.contains(SheetPath.Key.TILT) ? 0 : s.tiltRad(),
                    tied.contains(SheetPath.Key.ZERO_LIFT) ? null : s.zeroLiftRad(),
                    tied.contains(SheetPath.Key.CM_QUARTER) ? null : s.cmQuarter());
        }
    }

    /**
     * Another mass in the place of one; its place is moved by the way between both, since a mass that carries a surface's
     * name lies elsewhere in each version.
     *
     * @param carrier the surface of that name in the version it was measured on, null where there is none
     */
    record OfMass(
            @Nullable MassItem before,
            @Nullable MassItem after,
            @Nullable Surface carrier) implements AirframeEdit {

        @Override
        public String item() {
            return before != null ? before.name() : after != null ? after.name() : "";
        }

        @Override
        public boolean carriedBy(Airframe airframe, Set<SheetPath.Key> tied) {
            MassItem there = mass(airframe, item());
            if (before == null || there == null) {
                return before == null && there == null;
            }
            return tied.contains(SheetPath.Key.MASS) || there.massKg() == before.massKg();
        }

        @Override
        public Airframe was() {
            return alone(before);
        }

        @Override
        public Airframe becomes() {
            return alone(after);
        }

        private static Airframe alone(@Nullable MassItem mass) {
            return new Airframe(List.of(), mass == null ? List.of() : List.of(mass), null, null);
        }

        @Override
        public Airframe laidOn(Airframe airframe, Set<SheetPath.Key> tied) {
            MassItem there = mass(airframe, item());
            List<MassItem> masses = new ArrayList<>(airframe.masses());
            if (after == null) {
                masses.remove(there);
            } else if (there == null || before == null) {
                masses.add(placed(airframe, after));
            } else {
                boolean own = tied.contains(SheetPath.Key.MASS) && there.massKg() != before.massKg();
                boolean ownPlace = tied.contains(SheetPath.Key.AFT) && there.aftM() != before.aftM();
                masses.set(
                        masses.indexOf(there),
                        new MassItem(
                                after.name(),
                                own ? there.massKg() : after.massKg(),
                                ownPlace ? there.aftM() : there.aftM() + (after.aftM() - before.aftM()),
                                there.riseM() + (after.riseM() - before.riseM())));
            }
            return with(airframe, airframe.surfaces(), masses);
        }

        private MassItem placed(Airframe airframe, MassItem mass) {
            Surface here = surface(airframe, item());
            return carrier == null || here == null
                    ? mass
                    : new MassItem(
                            mass.name(),
                            mass.massKg(),
                            mass.aftM() + here.edgeAftM() - carrier.edgeAftM(),
                            mass.riseM() + here.riseM() - carrier.riseM());
        }
    }

    private static Airframe with(Airframe airframe, List<Surface> surfaces, List<MassItem> masses) {
        return new Airframe(surfaces, masses, airframe.measuredBalanceM(), airframe.motor());
    }

    /** The surface of this name, null where there is none. */
    static @Nullable Surface surface(Airframe airframe, String name) {
        return airframe.surfaces().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    /** The mass of this name, null where there is none. */
    static @Nullable MassItem mass(Airframe airframe, String name) {
        return airframe.masses().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElse(null);
    }
}
