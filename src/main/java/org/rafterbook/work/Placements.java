package org.rafterbook.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;
import org.rafterbook.stability.Placement;
import org.rafterbook.stability.PlacementAnswer;

/** Where a wing, ballast or tailplane has to sit for a wished margin of a version looked at. */
public final class Placements {

    /** How far a wing is looked for either way where its setting has no limits, m. */
    private static final double REACH_M = 0.04;

    private final Looked looked;
    private final @Nullable Airframe airframe;
    private final double wished;

    /**
     * @param wishedMargin fraction of the mean chord, as it would be shown: with the flyer's zero
     */
    public Placements(Looked looked, double wishedMargin) {
        this.looked = looked;
        AsFlown flown = AsFlown.of(looked);
        airframe = flown.airframe();
        wished = wishedMargin - flown.zero();
    }

    /** A range within which something can be placed, and whether the flyer set it. */
    public record Range(double fromM, double toM, boolean ofSlider) {}

    /** The place of the wings, slid together; the place is that of the first wing's root leading edge. */
    public PlacementAnswer wings() {
        Range range = slider();
        return airframe == null || range == null
                ? none()
                : new Placement(airframe, null, wished).slide(wingNames(), range.fromM(), range.toM());
    }

    /** How far the wings can be slid: what the limits of all their positions leave; null without wings. */
    public @Nullable Range slider() {
        if (airframe == null || wingNames().isEmpty()) {
            return null;
        }
        double ahead = Double.NEGATIVE_INFINITY;
        double back = Double.POSITIVE_INFINITY;
        List<Surface> wings = WingGeometry.of(airframe).wings();
        for (Surface wing : wings) {
            SettingDef setting = position(wing.name());
            Double low = setting == null ? null : setting.low();
            Double high = setting == null ? null : setting.high();
            ahead = low == null ? ahead : Math.max(ahead, low - wing.edgeAftM());
            back = high == null ? back : Math.min(back, high - wing.edgeAftM());
        }
        boolean set = Double.isFinite(ahead) && Double.isFinite(back);
        double first = wings.get(0).edgeAftM();
        return new Range(
                first + (Double.isFinite(ahead) ? ahead : -REACH_M),
                first + (Double.isFinite(back) ? back : REACH_M),
                set);
    }

    private @Nullable SettingDef position(String surface) {
        String path = new SheetPath(surface, SheetPath.Key.EDGE_AFT).toString();
        return looked.version().settings().stream()
                .filter(s -> path.equals(s.path()))
                .findFirst()
                .orElse(null);
    }

    private List<String> wingNames() {
        return airframe == null
                ? List.of()
                : WingGeometry.of(airframe).wings().stream().map(Surface::name).toList();
    }

    /** Where ballast of this mass has to lie, between the bearing and the end of the stick. */
    public PlacementAnswer ballast(double massKg) {
        return airframe == null ? none() : new Placement(airframe, null, wished).ballast(massKg, 0, end());
    }

    /** How much ballast it takes at a place, at most a third of the mass now. */
    public PlacementAnswer ballastAt(double placeM) {
        Double mass = looked.margin().massKg();
        return airframe == null
                ? none()
                : new Placement(airframe, null, wished).ballastAt(placeM, mass == null ? 0.001 : mass / 3);
    }

    /** Where the ballast lies that brings the airframe to its class's minimum. */
    public PlacementAnswer ballastToMinimum(double minimumKg) {
        return airframe == null ? none() : new Placement(airframe, null, wished).ballastToMinimum(minimumKg, 0, end());
    }

    /** Where the tailplane has to lie, up to two chords further back or nearer. */
    public PlacementAnswer tailArm() {
        if (airframe == null || WingGeometry.of(airframe).tails().isEmpty()) {
            return none();
        }
        double edge = WingGeometry.of(airframe).tails().get(0).edgeAftM();
        double reach = 2 * WingGeometry.of(airframe).meanChordM();
        return new Placement(airframe, null, wished).tailArm(edge - reach / 2, edge + reach);
    }

    /** How large the tailplane has to be, as a factor on its area. */
    public PlacementAnswer tailArea() {
        return airframe == null ? none() : new Placement(airframe, null, wished).tailArea(0.5, 2);
    }

    /** Which gap gives the margin, from a third of a chord to two and a half. */
    public PlacementAnswer gap() {
        if (airframe == null) {
            return none();
        }
        double chord = WingGeometry.of(airframe).meanChordM();
        return new Placement(airframe, null, wished).gap(chord / 3, 2.5 * chord);
    }

    private double end() {
        return airframe == null
                ? 0
                : airframe.surfaces().stream()
                        .mapToDouble(s -> s.edgeAftM() + s.ribs().get(0).chordM())
                        .max()
                        .orElse(0);
    }

    private PlacementAnswer none() {
        String missing = looked.margin().missing();
        return new PlacementAnswer(
                null, null, null, missing == null ? "The airframe lacks what is to be placed." : missing);
    }

    /** The airframe of an answer without what stood for the unknown rest, to be kept as a sketch. */
    public Airframe kept(Airframe answer) {
        return AsFlown.withoutRest(answer);
    }

    /** The settings that bring the version looked at to the answer, as finely as they can be set; empty where they cannot. */
    public Map<String, Setting> asSettings(Airframe answer) {
        Airframe wanted = kept(answer);
        Airframe now = looked.airframe();
        Map<String, Setting> changed = new HashMap<>();
        if (now == null) {
            return changed;
        }
        for (SettingDef setting : looked.version().settings()) {
            SheetPath path = setting.path() == null ? null : SheetPath.parse(setting.path());
            if (path != null && path.isIn(now) && path.isIn(wanted) && path.read(now) != path.read(wanted)) {
                changed.put(setting.id(), Setting.of(path.read(wanted)));
            }
        }
        Airframe reached = VersionBook.applied(looked.version().settings(), changed, now);
        boolean same = reached.surfaces().equals(wanted.surfaces())
                && reached.masses().size() == wanted.masses().size();
        Map<String, Setting> rounded = new HashMap<>();
        for (SettingDef setting : looked.version().settings()) {
            Setting value = changed.get(setting.id());
            if (same && value != null && value.number() != null) {
                rounded.put(setting.id(), Setting.of(toAFifthOfItsStep(setting, value.number())));
            }
        }
        return rounded;
    }

    /** As fine as keys and pointer turn a setting: an answer beyond that cannot be set. */
    private static double toAFifthOfItsStep(SettingDef setting, double value) {
        Double step = setting.step();
        return step == null ? value : Math.rint(value / (step / 5)) * (step / 5);
    }
}
