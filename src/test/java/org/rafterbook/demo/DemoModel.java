package org.rafterbook.demo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.units.Unit;

/** The three invented models: their sheets, how they fly as built, and what each setting truly does to the time. */
enum DemoModel {
    TEASEL("Teasel", 545, 0.275, 7.35, 2.6, 2.99, new DemoMotorSize(340, 1.04)),
    MARRAM("Marram", 236, 0.30, 6.9, 4.6, 5.76, new DemoMotorSize(260, 1.62)),
    QUIRE("Quire", 455, 0.29, 7.1, 3.3, 3.52, new DemoMotorSize(380, 1.32));

    /**
     * Camber of all wings, per cent. It and the tailplanes' give the versions flown most a hands-off lift coefficient of 1.1
     * to 1.3, what thin sections fly at (common practice, no source); margins and flights do not depend on it.
     */
    private static final double WING_CAMBER = 3.5;

    final String title;
    /** Time aloft, s, on a full motor of the first batch at 18 degrees, trimmed to the top of every response. */
    final double topTimeS;
    /** Share of the turns on the motor that is left at landing, on average. */
    final double shareLeft;
    /** Peak height, m, at {@link #usualTorque}. */
    final double usualPeakM;
    /** Usual torque at launch, N mm. */
    final double usualTorque;
    /** Ready to fly, g. */
    final double massG;

    final DemoMotorSize motor;

    DemoModel(
            String title,
            double topTimeS,
            double shareLeft,
            double usualPeakM,
            double usualTorque,
            double massG,
            DemoMotorSize motor) {
        this.title = title;
        this.topTimeS = topTimeS;
        this.shareLeft = shareLeft;
        this.usualPeakM = usualPeakM;
        this.usualTorque = usualTorque;
        this.massG = massG;
        this.motor = motor;
    }

    /** Settings as built, keyed by the name in the heading of their column; free ones keep their unit's number. */
    Map<String, String> asBuilt() {
        return switch (this) {
            case TEASEL ->
                settings(
                        "wing.edge_aft_mm=106",
                        "wing.incidence_deg=3",
                        "tail.incidence_deg=-0.25",
                        "ballast.mass_g=0.09",
                        "Rudder=3",
                        "Wash-in=1.5",
                        "Propeller=A",
                        "Left thrust=2");
            case MARRAM ->
                settings(
                        "wing.edge_aft_mm=88",
                        "wing.incidence_deg=3.5",
                        "tail.incidence_deg=-0.5",
                        "Rudder=4",
                        "Wash-in=1");
            case QUIRE ->
                settings(
                        "upper.edge_aft_mm=108",
                        "upper.incidence_deg=2.25",
                        "upper.rise_mm=62",
                        "lower.edge_aft_mm=128",
                        "lower.incidence_deg=2",
                        "tail.incidence_deg=-0.5",
                        "ballast.mass_g=0.08",
                        "Rudder=2.5");
        };
    }

    private static Map<String, String> settings(String... entries) {
        Map<String, String> settings = new LinkedHashMap<>();
        for (String entry : entries) {
            settings.put(entry.substring(0, entry.indexOf('=')), entry.substring(entry.indexOf('=') + 1));
        }
        return settings;
    }

    /**
     * The stability margin the truth is made with, per cent of the mean chord: a straight line through what a vortex
     * lattice gives for the sheet, so that the season does not change when the program's own engine does.
     */
    double margin(Map<String, String> s) {
        return switch (this) {
            case TEASEL ->
                10.6 + 0.64 * (number(s, "wing.edge_aft_mm") - 106) + 56 * (number(s, "ballast.mass_g") - 0.06);
            case MARRAM -> 9.1 + 0.75 * (number(s, "wing.edge_aft_mm") - 88);
            case QUIRE ->
                10.3
                        + 0.484 * (number(s, "upper.edge_aft_mm") - 108)
                        + 0.276 * (number(s, "lower.edge_aft_mm") - 128)
                        + 47.5 * (number(s, "ballast.mass_g") - 0.08);
        };
    }

    /** Margin, per cent, at which this model flies longest. */
    double bestMargin() {
        return switch (this) {
            case TEASEL -> 5.7;
            case MARRAM -> 6.2;
            case QUIRE -> 6.1;
        };
    }

    /** True effect of the trim on ln(time), 0 at best: one peak over the margin, steeper on the touchy side, and the rest. */
    double trim(Map<String, String> s) {
        double off = margin(s) - bestMargin();
        double margin = off < 0 ? -0.06 * off * off / 6.25 : -0.09 * off * off / 36;
        return margin
                + switch (this) {
                    case TEASEL ->
                        -0.12 * square(number(s, "wing.incidence_deg") - 2.5)
                                - 0.035 * Math.abs(number(s, "Rudder") - 3)
                                - 0.03 * Math.abs(number(s, "Wash-in") - 1.5)
                                + (s.get("Propeller").equals("A") ? 0 : -0.04)
                                + 0.015 * (number(s, "Left thrust") - 2);
                    case MARRAM ->
                        -0.03 * Math.max(0, number(s, "Rudder") - 3)
                                + 0.025 * (number(s, "Wash-in") - 2)
                                - 0.06 * Math.abs(number(s, "tail.incidence_deg") + 0.5);
                    case QUIRE ->
                        -0.16 * square(number(s, "upper.incidence_deg") - 2.75)
                                + 0.0015 * (number(s, "upper.rise_mm") - 72);
                };
    }

    private static double square(double x) {
        return x * x;
    }

    private static double number(Map<String, String> settings, String name) {
        return Double.parseDouble(settings.get(name));
    }

    /** The sheet as built. */
    AirframeSheet sheet() {
        return switch (this) {
            case TEASEL ->
                sheet(
                        List.of(
                                wing("wing", 106, 45, 3, rib(0, 0, 110, 0), rib(130, 3, 104, 12), rib(210, 22, 64, 40)),
                                tail(440, 8, -0.25, 3.1, rib(0, 0, 68, 0), rib(120, 10, 50, 0))),
                        List.of(
                                mass("wing", 0.54, 156, 50),
                                mass("tail", 0.19, 472, 8),
                                mass("fin", 0.05, 500, 20),
                                mass("stick", 0.5, 165, 0),
                                mass("boom", 0.19, 400, 0),
                                mass("propeller", 0.42, -6, 0),
                                mass("ballast", 0.09, 8, 0)),
                        165);
            case MARRAM ->
                sheet(
                        List.of(
                                wing("wing", 88, 30, 3.5, rib(0, 0, 92, 0), rib(150, 0, 92, 14), rib(190, 12, 66, 30)),
                                tail(450, 10, -0.5, 4.3, rib(0, 0, 66, 0), rib(105, 8, 50, 0))),
                        List.of(
                                mass("wing", 0.95, 130, 36),
                                mass("tail", 0.34, 480, 10),
                                mass("fin", 0.09, 505, 24),
                                mass("stick", 1.25, 140, 0),
                                mass("boom", 0.46, 400, 0),
                                mass("propeller", 1.05, -8, 0)),
                        140);
            case QUIRE ->
                sheet(
                        List.of(
                                wing(
                                        "upper",
                                        108,
                                        62,
                                        2.25,
                                        rib(0, 0, 94, 0),
                                        rib(150, 0, 94, 10),
                                        rib(190, 14, 60, 22)),
                                wing("lower", 128, -33, 2, rib(0, 0, 88, 0), rib(130, 0, 88, 8), rib(170, 13, 56, 18)),
                                tail(430, 4, -0.5, 2, rib(0, 0, 72, 0), rib(105, 8, 56, 0))),
                        List.of(
                                mass("upper", 0.46, 152, 66),
                                mass("lower", 0.38, 169, -30),
                                mass("tail", 0.16, 464, 4),
                                mass("fin", 0.04, 480, 18),
                                mass("stick", 0.48, 140, 0),
                                mass("boom", 0.14, 380, 0),
                                mass("propeller", 0.46, -6, 0),
                                mass("ballast", 0.08, 6, 0)),
                        140);
        };
    }

    private AirframeSheet sheet(List<Surface> surfaces, List<MassItem> masses, double motorAftMm) {
        MotorPlace place = new MotorPlace(Unit.G.toSi(motor.massG()), Unit.MM.toSi(motorAftMm));
        return new AirframeSheet(title, "as built", new Airframe(surfaces, masses, null, place));
    }

    private static Surface wing(String name, double edgeAft, double rise, double incidence, Rib... ribs) {
        return surface(name, Role.WING, edgeAft, rise, incidence, WING_CAMBER, ribs);
    }

    private static Surface tail(double edgeAft, double rise, double incidence, double camber, Rib... ribs) {
        return surface("tail", Role.TAILPLANE, edgeAft, rise, incidence, camber, ribs);
    }

    private static Surface surface(
            String name, Role role, double edgeAft, double rise, double incidence, double camber, Rib... ribs) {
        return Surface.symmetric(
                name,
                role,
                Unit.MM.toSi(edgeAft),
                Unit.MM.toSi(rise),
                Unit.DEG.toSi(incidence),
                Unit.PERCENT.toSi(camber),
                List.of(ribs));
    }

    private static Rib rib(double out, double edgeAft, double chord, double rise) {
        return new Rib(Unit.MM.toSi(out), Unit.MM.toSi(edgeAft), Unit.MM.toSi(chord), Unit.MM.toSi(rise), 0);
    }

    private static MassItem mass(String name, double massG, double aft, double rise) {
        return new MassItem(name, Unit.G.toSi(massG), Unit.MM.toSi(aft), Unit.MM.toSi(rise));
    }
}
