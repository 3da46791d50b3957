package org.rafterbook.stability;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeEdits;
import org.rafterbook.airframe.BalancePoint;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Planform;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;

/**
 * Where something has to sit, or how large it has to be, for a wished margin. Slides, areas and gaps are found by solving
 * lattices for each trial (some hundredths of a second); ballast follows from moments alone.
 */
public final class Placement {

    private static final int TRIALS = 9;

    /** Coarse lattices look for the neighbourhood of an answer, the default ones then say where it is. */
    private static final LatticeSettings COARSE = new LatticeSettings(8, 2, true, LatticeSettings.Spacing.COSINE);

    /** Margins of coarse lattices are nearer than this to those shown, as a fraction of the chord. */
    private static final double COARSE_ERROR = 0.05;

    private final Airframe airframe;
    private final Trials trials;
    private final double wished;

    /**
     * @param motor the motor flown; null for the sheet's own
     * @param wishedMargin fraction of the mean chord
     */
    public Placement(Airframe airframe, @Nullable MotorPlace motor, double wishedMargin) {
        this.airframe = airframe;
        trials = new Trials(airframe, motor);
        wished = wishedMargin;
    }

    /**
     * Where wings have to sit: all those named are slid together, masses of their names with them.
     *
     * @param fromM foremost place the slider allows for the root leading edge of the first named, m
     * @param toM aftmost place
     * @return place of the first named's root leading edge, m
     */
    public PlacementAnswer slide(List<String> surfaces, double fromM, double toM) {
        Surface first = airframe.surfaces().stream()
                .filter(s -> s.name().equals(surfaces.get(0)))
                .findFirst()
                .orElse(null);
        if (first == null) {
            return PlacementAnswer.none("There is no surface named \"" + surfaces.get(0) + "\".");
        }
        double present = first.edgeAftM();
        return search(fromM, toM, present, edge -> slid(surfaces, edge - present), "mm", 1000);
    }

    private Airframe slid(List<String> surfaces, double byM) {
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
        return search(fromFactor, toFactor, 1, factor -> scaled(tail.name(), factor, quarter), "times the area", 1);
    }

    private Airframe scaled(String tail, double factor, double quarterM) {
        double size = Math.sqrt(factor);
        Airframe scaled = AirframeEdits.scaled(airframe, tail, size, size);
        return AirframeEdits.withSurface(
                scaled,
                tail,
                s -> new Surface(
                        s.name(),
                        s.role(),
                        s.edgeAftM() + quarterM - Planform.of(s).quarterChordM(),
                        s.riseM(),
                        s.incidenceRad(),
                        s.camber(),
                        s.ribs(),
                        s.ribsLeft(),
                        s.offsetLeftM(),
                        s.tiltRad(),
                        s.zeroLiftRad(),
                        s.cmQuarter()));
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
        return new Ballast(trials, wished).ofMass(massKg, fromM, toM);
    }

    /** How much ballast it takes at a given place, kg, up to the most that is allowed. */
    public PlacementAnswer ballastAt(double placeM, double mostKg) {
        return new Ballast(trials, wished).at(placeM, mostKg);
    }

    /**
     * Where the ballast that brings the airframe to its class's minimum has to lie so that the margin comes out too, m.
     *
     * @param minimumKg least mass of the airframe without motor, kg
     */
    public PlacementAnswer ballastToMinimum(double minimumKg, double fromM, double toM) {
        return new Ballast(trials, wished).toMinimum(minimumKg, fromM, toM);
    }

    private @Nullable Surface tail() {
        List<Surface> tails = WingGeometry.of(airframe).tails();
        return tails.isEmpty() ? null : tails.get(0);
    }

    private PlacementAnswer search(
            double from, double to, double present, DoubleFunction<Airframe> change, String unit, double perUnit) {
        String problem = trials.problem();
        BalancePoint now = trials.balance(airframe);
        if (problem != null || now.aftM() == null) {
            return PlacementAnswer.none(problem == null ? Trials.unknown(now) : problem);
        }
        MarginSearch coarse = new MarginSearch(x -> trials.margin(change.apply(x), COARSE), wished);
        MarginSearch fine = new MarginSearch(x -> trials.margin(change.apply(x), LatticeSettings.DEFAULT), wished);
        Double value = value(coarse, fine, from, to, present);
        if (value != null) {
            return trials.answer(value, change.apply(value));
        }
        if (!Double.isNaN(coarse.unknownAt())) {
            return PlacementAnswer.none(trials.missing(change.apply(coarse.unknownAt())));
        }
        String ends = perUnit == 1 ? "From %.2f to %.2f" : "From %.1f to %.1f";
        return PlacementAnswer.none(String.format(
                Locale.ROOT,
                ends + " %s the margin lies between %.1f and %.1f %%, never at %.1f %%.",
                from * perUnit,
                to * perUnit,
                unit,
                100 * fine.least(),
                100 * fine.most(),
                100 * wished));
    }

    private static @Nullable Double value(
            MarginSearch coarse, MarginSearch fine, double from, double to, double present) {
        Double about = coarse.nearest(from, to, present, TRIALS);
        if (about == null && coarse.missesBy(COARSE_ERROR)) {
            fine.endsOf(coarse);
            return null;
        }
        Double value = about == null ? null : fine.near(about, coarse.slope(about, (to - from) / TRIALS), from, to);
        return value == null ? fine.nearest(from, to, present, TRIALS) : value;
    }
}
