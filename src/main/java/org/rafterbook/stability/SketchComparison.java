package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeEdits;
import org.rafterbook.airframe.AirframeProblem;
import org.rafterbook.airframe.AirframeProblems;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;

/**
 * Designs that were never flown, side by side at equal margin, equal mass (the class's minimum and the motor) and equal lift
 * coefficient: the wings are slid for the margin, then the tailplane is turned for the lift.
 */
public final class SketchComparison {

    private static final double SEARCH_CHORDS = 4;

    /**
     * What the sketches have in common.
     *
     * @param margin wished margin, fraction of the mean chord
     * @param minimumKg least mass of the airframe without motor, kg
     * @param motor the motor flown; null for each sheet's own
     * @param liftCoefficient lift coefficient at trim
     * @param airDensity kg/m^3
     * @param slideAheadM how far the slider lets the wings go ahead of where the sketch has them, m
     * @param slideAftM how far aft, m
     */
    public record Terms(
            double margin,
            double minimumKg,
            @Nullable MotorPlace motor,
            double liftCoefficient,
            double airDensity,
            double slideAheadM,
            double slideAftM) {}

    /**
     * One sketch; what cannot be told is null and {@code missing} says why.
     *
     * @param wingMovedM how far the wings must be slid from where the sketch has them, aft positive, m
     * @param sliderAllows whether the slider goes there
     * @param slopeKept lift slope of each wing over that of the same wing alone
     * @param gapInChords gap over the mean chord; null unless there are two wings
     * @param massKg all-up mass compared at, kg
     * @param tailIncidenceRad incidence of the tailplane at trim, rad
     * @param airframe the sketch with its wings slid and its tailplane turned
     * @param trim speed, induced power, touchiness and slow mode there
     */
    public record Row(
            String name,
            @Nullable Double wingMovedM,
            boolean sliderAllows,
            @Nullable Double neutralPointM,
            Map<String, Double> slopeKept,
            @Nullable Double gapInChords,
            @Nullable Double massKg,
            @Nullable Double tailIncidenceRad,
            @Nullable Airframe airframe,
            @Nullable TrimAnswer trim,
            @Nullable String missing) {}

    private SketchComparison() {}

    /** One row for each sketch, in their order. */
    public static List<Row> of(Map<String, Airframe> sketches, Terms terms) {
        List<Row> rows = new ArrayList<>();
        sketches.forEach((name, airframe) -> rows.add(row(name, airframe, terms)));
        return rows;
    }

    private static Row row(String name, Airframe airframe, Terms terms) {
        String problem = AirframeProblems.ofGeometry(airframe).stream()
                .filter(p -> p.kind().hidesNeutralPoint())
                .map(AirframeProblem::sentence)
                .findFirst()
                .orElse(null);
        if (problem != null) {
            return missing(name, problem);
        }
        WingGeometry wings = WingGeometry.of(airframe);
        List<String> names = wings.wings().stream().map(Surface::name).toList();
        double present = wings.wings().get(0).edgeAftM();
        double reach = SEARCH_CHORDS * wings.meanChordM();
        Placement placement = new Placement(airframe, terms.motor(), terms.margin());
        PlacementAnswer place = placement.slide(names, present - reach, present + reach);
        Double edge = place.value();
        Airframe slid = place.airframe();
        if (edge == null || slid == null) {
            return missing(name, place.reason() == null ? "The wing has no place." : place.reason());
        }
        double moved = edge - present;
        GeometrySolution solution = GeometrySolution.of(slid, LatticeSettings.DEFAULT);
        double motorKg = slid.motor() == null ? 0 : slid.motor().massKg();
        double mass = terms.minimumKg() + motorKg;
        double balance = solution.neutralPointM() - terms.margin() * wings.meanChordM();
        Double tail = tailIncidence(solution, slid, terms);
        Airframe trimmed = slid;
        if (tail != null) {
            trimmed = AirframeEdits.turned(slid, wings.tails().get(0).name(), tail);
        }
        TrimAnswer trim = !(mass > 0) || !(terms.airDensity() > 0)
                ? null
                : Trim.of(solution, trimmed, TrimConditions.straight(mass, balance, terms.airDensity()));
        Double gap = wings.gapM();
        return new Row(
                name,
                moved,
                moved >= -terms.slideAheadM() - 1e-9 && moved <= terms.slideAftM() + 1e-9,
                solution.neutralPointM(),
                GapStudy.slopeKept(solution, GapStudy.slopesAlone(slid)),
                gap == null ? null : gap / wings.meanChordM(),
                mass,
                tail,
                trimmed,
                trim,
                why(trim));
    }

    /** Why speed and power are missing; null where they are not. */
    private static @Nullable String why(@Nullable TrimAnswer trim) {
        if (trim == null) {
            return "Speed and power need a mass.";
        }
        return trim.missing() == null ? trim.caution() : trim.missing();
    }

    /** The incidence of the tailplane at which the sketch flies hands off at the common lift; null without tailplane. */
    private static @Nullable Double tailIncidence(GeometrySolution solution, Airframe airframe, Terms terms) {
        WingGeometry wings = solution.wings();
        for (int s = 0; s < solution.surfaces().size(); s++) {
            if (solution.surfaces().get(s).role() == Role.TAILPLANE) {
                double about = solution.neutralPointM();
                double wanted = terms.margin() * terms.liftCoefficient() * wings.areaM2() * wings.meanChordM() / 2;
                double perRad = solution.incidence(s).noseUpAbout(about);
                double short0 = wanted - solution.fixed(airframe).noseUpAbout(about);
                return wings.tails().get(0).incidenceRad() + short0 / perRad;
            }
        }
        return null;
    }

    private static Row missing(String name, String why) {
        return new Row(name, null, false, null, Map.of(), null, null, null, null, null, why);
    }
}
