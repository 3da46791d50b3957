package org.rafterbook.stability;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeEdits;
import org.rafterbook.airframe.AirframeProblem;
import org.rafterbook.airframe.AirframeProblems;
import org.rafterbook.airframe.Balance;
import org.rafterbook.airframe.BalancePoint;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Planform;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;

/**
 * Where something has to sit, or how large it has to be, for a wished margin. Slides, areas and gaps are found by solving the
 * lattice for each trial (a tenth of a second); ballast follows from moments alone.
 */
public final class Placement {

    private static final int TRIALS = 9;

    private final Airframe airframe;
    private final @Nullable MotorPlace motor;
    private final double wished;

    /**
     * @param motor the motor flown; null for the sheet's own
     * @param wishedMargin fraction of the mean chord
     */
    public Placement(Airframe airframe, @Nullable MotorPlace motor, double wishedMargin) {
        this.airframe = airframe;
        this.motor = motor == null ? airframe.motor() : motor;
        this.wished = wishedMargin;
    }

    /**
     * Where wings have to sit: all those named are slid together, masses of their names with them.
     *
     * @param fromM foremost place the slider allows for the root leading edge of the first named, m
     * @param toM aftmost place
     * @return place of the first named's root leading edge, m
     */
    public PlacementAnswer slide(List<String> surfaces, double fromM, double toM) {
        Surface first = surface(surfaces.get(0));
        if (first == null) {
            return PlacementAnswer.none("There is no surface named \"" + surfaces.get(0) + "\".");
        }
        return search(
                fromM, toM, first.edgeAftM(), edge -> slid(airframe, surfaces, edge - first.edgeAftM()), "mm", 1000);
    }

    static Airframe slid(Airframe airframe, List<String> surfaces, double byM) {
        Airframe moved = airframe;
        for (Surface s : airframe.surfaces()) {
            if (surfaces.contains(s.name())) {
                moved = AirframeEdits.moved(moved, s.name(), s.edgeAftM() + byM, s.riseM());
            }
        }
        return moved;
    }

    /** Where a tailplane's root leading edge has to lie, m; its mass goes along. */
    public PlacementAnswer tailArm(double fromM, double toM) {
        Surface tail = tail();
        if (tail == null) {
            return PlacementAnswer.none("There is no tailplane.");
        }
        return search(
                fromM,
                toM,
                tail.edgeAftM(),
                x -> AirframeEdits.moved(airframe, tail.name(), x, tail.riseM()),
                "mm",
                1000);
    }

    /**
     * How large the tailplane has to be, as a factor on its area: span and chord grow alike about its quarter point, its mass
     * stays.
     */
    public PlacementAnswer tailArea(double fromFactor, double toFactor) {
        Surface tail = tail();
        if (tail == null) {
            return PlacementAnswer.none("There is no tailplane.");
        }
        double quarter = Planform.of(tail).quarterChordM();
        return search(
                fromFactor,
                toFactor,
                1,
                factor -> {
                    double size = Math.sqrt(factor);
                    Airframe scaled = AirframeEdits.scaled(airframe, tail.name(), size, size);
                    return AirframeEdits.withSurface(
                            scaled,
                            tail.name(),
                            s -> new Surface(
                                    s.name(),
                                    s.role(),
                                    s.edgeAftM() + quarter - Planform.of(s).quarterChordM(),
                                    s.riseM(),
                                    s.incidenceRad(),
                                    s.camber(),
                                    s.ribs(),
                                    s.ribsLeft(),
                                    s.offsetLeftM(),
                                    s.tiltRad(),
                                    s.zeroLiftRad(),
                                    s.cmQuarter()));
                },
                "times the area",
                1);
    }

    /** The gap between two wings that gives the margin, the upper one being raised or lowered, m. */
    public PlacementAnswer gap(double fromM, double toM) {
        WingGeometry wings = WingGeometry.of(airframe);
        Surface upper = wings.upperWing();
        Surface lower = wings.lowerWing();
        Double present = wings.gapM();
        if (upper == null || lower == null || present == null) {
            return PlacementAnswer.none("There is a gap only with two wings.");
        }
        return search(
                fromM,
                toM,
                present,
                gap -> AirframeEdits.moved(airframe, upper.name(), upper.edgeAftM(), lower.riseM() + gap),
                "mm",
                1000);
    }

    /** Where ballast of a given mass has to lie, m aft of the origin, between two places. */
    public PlacementAnswer ballast(double massKg, double fromM, double toM) {
        Target target = target();
        BalancePoint now = balance(airframe);
        Double at = now.aftM();
        Double mass = now.massKg();
        if (target.reason != null || at == null || mass == null) {
            return PlacementAnswer.none(target.reason != null ? target.reason : unknown(now));
        }
        if (!(massKg > 0)) {
            return PlacementAnswer.none("Ballast needs a mass above zero.");
        }
        double place = ((mass + massKg) * target.balanceM - mass * at) / massKg;
        if (place < fromM || place > toM) {
            return PlacementAnswer.none(String.format(
                    Locale.ROOT,
                    "%.2f g of ballast would have to lie at %.0f mm, outside of %.0f to %.0f mm: it takes more mass, or"
                            + " the wing has to move.",
                    massKg * 1000,
                    place * 1000,
                    fromM * 1000,
                    toM * 1000));
        }
        return with(new MassItem("ballast", massKg, place, 0), place);
    }

    /** How much ballast it takes at a given place, kg, up to the most that is allowed. */
    public PlacementAnswer ballastAt(double placeM, double mostKg) {
        Target target = target();
        BalancePoint now = balance(airframe);
        Double at = now.aftM();
        Double mass = now.massKg();
        if (target.reason != null || at == null || mass == null) {
            return PlacementAnswer.none(target.reason != null ? target.reason : unknown(now));
        }
        double way = target.balanceM - at;
        double lever = placeM - target.balanceM;
        if (Math.abs(way) < 1e-9) {
            return PlacementAnswer.none("The margin is what is wished already: no ballast is needed.");
        }
        if (way * lever <= 0) {
            return PlacementAnswer.none(String.format(
                    Locale.ROOT,
                    "Ballast at %.0f mm moves the balance point the wrong way: it has to lie %s of %.0f mm.",
                    placeM * 1000,
                    way > 0 ? "aft" : "ahead",
                    target.balanceM * 1000));
        }
        double massKg = mass * way / lever;
        if (massKg > mostKg) {
            return PlacementAnswer.none(String.format(
                    Locale.ROOT,
                    "It would take %.2f g of ballast at %.0f mm, more than the %.2f g allowed.",
                    massKg * 1000,
                    placeM * 1000,
                    mostKg * 1000));
        }
        return with(new MassItem("ballast", massKg, placeM, 0), massKg);
    }

    /**
     * Where the ballast that brings the airframe to its class's minimum has to lie so that the margin comes out too, m.
     *
     * @param minimumKg least mass of the airframe without motor, kg
     */
    public PlacementAnswer ballastToMinimum(double minimumKg, double fromM, double toM) {
        Double mass = balance(airframe).massKg();
        if (mass == null) {
            return PlacementAnswer.none(unknown(balance(airframe)));
        }
        double short0 = minimumKg - (mass - (motor == null ? 0 : motor.massKg()));
        if (short0 <= 0) {
            return PlacementAnswer.none(String.format(
                    Locale.ROOT,
                    "The airframe is %.2f g above the minimum without ballast: none is needed for it.",
                    -short0 * 1000));
        }
        return ballast(short0, fromM, toM);
    }

    private PlacementAnswer with(MassItem ballast, double value) {
        Airframe put = put(AirframeEdits.withMass(airframe, ballast));
        return new PlacementAnswer(value, put, marginOf(put), null);
    }

    /** Where the balance point has to lie, or why that cannot be said. */
    private record Target(double balanceM, @Nullable String reason) {}

    private Target target() {
        String problem = problem(airframe);
        if (problem != null) {
            return new Target(0, problem);
        }
        GeometrySolution solution = GeometrySolution.of(airframe, LatticeSettings.DEFAULT);
        return new Target(solution.neutralPointM() - wished * solution.wings().meanChordM(), null);
    }

    private static @Nullable String problem(Airframe airframe) {
        return AirframeProblems.ofGeometry(airframe).stream()
                .filter(p -> p.kind().hidesNeutralPoint())
                .map(AirframeProblem::sentence)
                .findFirst()
                .orElse(null);
    }

    private static String unknown(BalancePoint balance) {
        return balance.missing() == null ? "The balance point is unknown." : balance.missing();
    }

    private BalancePoint balance(Airframe changed) {
        Double measured = airframe.measuredBalanceM();
        return measured == null
                ? Balance.computed(changed.masses(), motor)
                : Balance.carried(airframe, measured, airframe.motor(), null, changed, motor);
    }

    /** The changed airframe as a sheet of its own, with the balance that the change leads to. */
    private Airframe put(Airframe changed) {
        return new Airframe(
                changed.surfaces(),
                changed.masses(),
                airframe.measuredBalanceM() == null ? null : balance(changed).aftM(),
                motor);
    }

    private static @Nullable Double marginOf(Airframe put) {
        Double balance = Balance.of(put, null).aftM();
        if (balance == null || problem(put) != null) {
            return null;
        }
        GeometrySolution solution = GeometrySolution.of(put, LatticeSettings.DEFAULT);
        return (solution.neutralPointM() - balance) / solution.wings().meanChordM();
    }

    private @Nullable Surface surface(String name) {
        return airframe.surfaces().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private @Nullable Surface tail() {
        List<Surface> tails = WingGeometry.of(airframe).tails();
        return tails.isEmpty() ? null : tails.get(0);
    }

    private PlacementAnswer search(
            double from, double to, double present, DoubleFunction<Airframe> change, String unit, double perUnit) {
        String problem = problem(airframe);
        if (problem != null) {
            return PlacementAnswer.none(problem);
        }
        BalancePoint now = balance(airframe);
        if (now.aftM() == null) {
            return PlacementAnswer.none(unknown(now));
        }
        MarginSearch search = new MarginSearch(x -> marginOf(put(change.apply(x))), wished);
        Double value = search.nearest(from, to, present, TRIALS);
        if (value != null) {
            Airframe put = put(change.apply(value));
            return new PlacementAnswer(value, put, marginOf(put), null);
        }
        if (!Double.isNaN(search.unknownAt())) {
            return PlacementAnswer.none(missingAt(change.apply(search.unknownAt())));
        }
        return PlacementAnswer.none(String.format(
                Locale.ROOT,
                "From %.4g to %.4g %s the margin lies between %.1f and %.1f %%, never at %.1f %%.",
                from * perUnit,
                to * perUnit,
                unit,
                100 * search.least(),
                100 * search.most(),
                100 * wished));
    }

    /** Why a changed airframe has no margin: its geometry, else the balance that cannot be carried to it. */
    private String missingAt(Airframe changed) {
        String problem = problem(changed);
        return problem == null ? unknown(balance(changed)) : problem;
    }
}
