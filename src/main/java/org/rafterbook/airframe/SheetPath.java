package org.rafterbook.airframe;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;

/**
 * One number of an airframe sheet, named {@code <surface or mass>.<sheet key>} such as {@code wing.edge_aft_mm}. Values
 * here are SI; the key's ending only says what the sheet writes.
 */
public record SheetPath(String item, Key key) {

    /** The keys of a sheet that a setting can be tied to. */
    public enum Key {
        EDGE_AFT("edge_aft_mm", "LENGTH", "mm", true),
        RISE("rise_mm", "LENGTH", "mm", true),
        INCIDENCE("incidence_deg", "ANGLE", "°", true),
        CAMBER("camber_percent", "FRACTION", "%", true),
        OFFSET_LEFT("offset_left_mm", "LENGTH", "mm", true),
        TILT("tilt_deg", "ANGLE", "°", true),
        ZERO_LIFT("zero_lift_deg", "ANGLE", "°", true),
        CM_QUARTER("cm_quarter", "PLAIN", "", true),
        SPAN("span_mm", "LENGTH", "mm", true),
        CHORD("chord_mm", "LENGTH", "mm", true),
        MASS("mass_g", "MASS", "g", false),
        AFT("aft_mm", "LENGTH", "mm", false);

        private final String sheetKey;
        private final String quantity;
        private final String unit;
        private final boolean ofSurface;

        Key(String sheetKey, String quantity, String unit, boolean ofSurface) {
            this.sheetKey = sheetKey;
            this.quantity = quantity;
            this.unit = unit;
            this.ofSurface = ofSurface;
        }

        /** As the sheet writes it. */
        public String sheetKey() {
            return sheetKey;
        }

        /** Name of the quantity in {@code units}. */
        public String quantity() {
            return quantity;
        }

        /** Symbol of the unit the sheet writes it in. */
        public String unit() {
            return unit;
        }
    }

    /** The path as written, or null where the text names no key of a sheet. */
    public static @Nullable SheetPath parse(String text) {
        int dot = text.lastIndexOf('.');
        if (dot <= 0) {
            return null;
        }
        for (Key key : Key.values()) {
            if (key.sheetKey.equals(text.substring(dot + 1))) {
                return new SheetPath(text.substring(0, dot), key);
            }
        }
        return null;
    }

    @Override
    public String toString() {
        return item + "." + key.sheetKey;
    }

    /**
     * True where the airframe has the surface or mass this path names with this key: span and chord are keys of
     * rectangles, zero-lift angle and moment of surfaces that say them.
     */
    public boolean isIn(Airframe airframe) {
        if (key.ofSurface) {
            return airframe.surfaces().stream().anyMatch(s -> s.name().equals(item) && has(s));
        }
        return airframe.masses().stream().anyMatch(m -> m.name().equals(item));
    }

    private boolean has(Surface s) {
        return switch (key) {
            case SPAN, CHORD -> isRectangle(s);
            case ZERO_LIFT -> s.zeroLiftRad() != null;
            case CM_QUARTER -> s.cmQuarter() != null;
            case EDGE_AFT, RISE, INCIDENCE, CAMBER, OFFSET_LEFT, TILT, MASS, AFT -> true;
        };
    }

    private static boolean isRectangle(Surface s) {
        return s.ribsLeft() == null
                && s.ribs().size() == 2
                && s.ribs()
                        .equals(rectangle(
                                s.ribs().get(1).outM(), s.ribs().get(1).chordM()));
    }

    private static List<Rib> rectangle(double halfSpan, double chord) {
        return List.of(new Rib(0, 0, chord, 0, 0), new Rib(halfSpan, 0, chord, 0, 0));
    }

    /** The value on this airframe, SI. */
    public double read(Airframe airframe) {
        if (key.ofSurface) {
            for (Surface s : airframe.surfaces()) {
                if (s.name().equals(item) && has(s)) {
                    return switch (key) {
                        case EDGE_AFT -> s.edgeAftM();
                        case RISE -> s.riseM();
                        case INCIDENCE -> s.incidenceRad();
                        case CAMBER -> s.camber();
                        case OFFSET_LEFT -> s.offsetLeftM();
                        case TILT -> s.tiltRad();
                        case ZERO_LIFT -> Objects.requireNonNull(s.zeroLiftRad());
                        case CM_QUARTER -> Objects.requireNonNull(s.cmQuarter());
                        case SPAN -> 2 * s.ribs().get(1).outM();
                        case CHORD -> s.ribs().get(1).chordM();
                        case MASS, AFT -> throw absent();
                    };
                }
            }
        } else {
            for (MassItem m : airframe.masses()) {
                if (m.name().equals(item)) {
                    return key == Key.MASS ? m.massKg() : m.aftM();
                }
            }
        }
        throw absent();
    }

    /** The airframe with this value set; masses that carry a surface's name move with it. */
    public Airframe set(Airframe airframe, double value) {
        if (!isIn(airframe)) {
            throw absent();
        }
        return key.ofSurface ? setSurface(airframe, value) : setMass(airframe, value);
    }

    private Airframe setSurface(Airframe airframe, double value) {
        double before = read(airframe);
        List<Surface> surfaces = new ArrayList<>();
        for (Surface s : airframe.surfaces()) {
            surfaces.add(s.name().equals(item) ? with(s, value) : s);
        }
        List<MassItem> masses = new ArrayList<>();
        for (MassItem m : airframe.masses()) {
            boolean carried = m.name().equals(item);
            double aft = carried && key == Key.EDGE_AFT ? value - before : 0;
            double rise = carried && key == Key.RISE ? value - before : 0;
            masses.add(new MassItem(m.name(), m.massKg(), m.aftM() + aft, m.riseM() + rise));
        }
        return new Airframe(surfaces, masses, airframe.measuredBalanceM(), airframe.motor());
    }

    private Surface with(Surface s, double value) {
        return new Surface(
                s.name(),
                s.role(),
                key == Key.EDGE_AFT ? value : s.edgeAftM(),
                key == Key.RISE ? value : s.riseM(),
                key == Key.INCIDENCE ? value : s.incidenceRad(),
                key == Key.CAMBER ? value : s.camber(),
                ribs(s, value),
                s.ribsLeft(),
                key == Key.OFFSET_LEFT ? value : s.offsetLeftM(),
                key == Key.TILT ? value : s.tiltRad(),
                key == Key.ZERO_LIFT ? Double.valueOf(value) : s.zeroLiftRad(),
                key == Key.CM_QUARTER ? Double.valueOf(value) : s.cmQuarter());
    }

    private List<Rib> ribs(Surface s, double value) {
        return switch (key) {
            case SPAN -> rectangle(value / 2, s.ribs().get(1).chordM());
            case CHORD -> rectangle(s.ribs().get(1).outM(), value);
            case EDGE_AFT, RISE, INCIDENCE, CAMBER, OFFSET_LEFT, TILT, ZERO_LIFT, CM_QUARTER, MASS, AFT -> s.ribs();
        };
    }

    private Airframe setMass(Airframe airframe, double value) {
        List<MassItem> masses = new ArrayList<>();
        for (MassItem m : airframe.masses()) {
            if (m.name().equals(item)) {
                masses.add(
                        key == Key.MASS
                                ? new MassItem(m.name(), value, m.aftM(), m.riseM())
                                : new MassItem(m.name(), m.massKg(), value, m.riseM()));
            } else {
                masses.add(m);
            }
        }
        return new Airframe(airframe.surfaces(), masses, airframe.measuredBalanceM(), airframe.motor());
    }

    private UserError absent() {
        return UserError.badInput("The airframe has nothing named '" + item + "' with " + key.sheetKey + ".");
    }
}
