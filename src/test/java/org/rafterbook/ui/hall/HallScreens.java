package org.rafterbook.ui.hall;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.ReviewScreens;
import org.rafterbook.ui.Screen;
import org.rafterbook.ui.action.Press;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.HeightMark;
import org.rafterbook.work.LandingEnd;
import org.rafterbook.work.MarginText;
import org.rafterbook.work.Rigged;
import org.rafterbook.work.WindForm;

/** Pictures of the Hall in each of its states, on an evening of the demo's own scenario. */
public final class HallScreens {

    private HallScreens() {}

    public static List<Screen> all() {
        return List.of(
                screen("hall-first", false, hall -> {}),
                screen("hall-preparing", true, hall -> {}),
                screen("hall-winding", true, hall -> hall.model.stateProperty().set(HallState.WINDING)),
                screen("hall-visit", true, hall -> hall.model.stateProperty().set(HallState.VISIT)),
                screen("hall-in-the-air", true, HallScreens::launch),
                screen("hall-landing", true, hall -> {
                    launch(hall);
                    hall.model.air().stop(press(hall, 641.3));
                    hall.model.landing().end(LandingEnd.MOTOR_TURNING);
                }),
                screen("hall-trial", true, hall -> trial(hall, 2)),
                screen("hall-trial-landing", true, hall -> {
                    trial(hall, 3);
                    launch(hall);
                    hall.model.air().stop(press(hall, 601.3));
                    hall.model.landing().end(LandingEnd.MOTOR_TURNING);
                }),
                screen("hall-trial-judged", true, hall -> trial(hall, 6)),
                screen("hall-short-flight", true, hall -> {
                    hall.model.preparing().start(press(hall, 0));
                    hall.model.air().stop(press(hall, 2.1));
                }),
                screen("hall-left-out", true, hall -> {
                    hall.model.preparing().start(press(hall, 0));
                    hall.model.air().stop(press(hall, 2.1));
                    hall.model.landing().aborted();
                }),
                screen("hall-beside-the-trial", true, hall -> {
                    trial(hall, 2);
                    Rigged rigged =
                            Objects.requireNonNull(hall.data().prepared().rigged());
                    hall.desk.set(rigged.model().id(), rigged.settings().get(0).id(), Setting.of(0.140));
                    hall.model.load();
                }),
                new Screen("hall-help", HallScreens::demo, scene -> Fx.key(scene, KeyCode.UNDEFINED, "?")),
                new Screen("hall-demo", HallScreens::demo),
                new Screen("hall-demo-in-the-air", tools -> {
                    HallBench hall = demoBench(tools);
                    launch(hall);
                    return hall.shell;
                }));
    }

    private static Parent demo(Tools tools) {
        return demoBench(tools).shell;
    }

    private static HallBench demoBench(Tools tools) {
        HallBench hall = new HallBench(ReviewScreens.demoCopy(), tools, null);
        hall.clock.forward(4 * 3600);
        hall.model.load();
        HallData data = hall.data();
        Motor motor = data.motors().get(data.motors().size() - 1);
        hall.model
                .preparing()
                .wind(new WindForm(motor.id(), 1980.0, 110.0, 0.0041, 0.0026, null, Map.of()), failure -> {});
        return hall;
    }

    /** A trial of the wing's place of which so many of six flights are flown; the sixth ends it. */
    private static void trial(HallBench hall, int flown) {
        HallData data = hall.data();
        String teasel = Objects.requireNonNull(data.prepared().rigged()).model().id();
        String wing = data.prepared().rigged().settings().get(0).id();
        hall.desk.trials().open(teasel, wing, Setting.of(0.149), Setting.of(0.146), 3);
        hall.model.load();
        hall.model.trial().setNext();
        for (int i = 0; i < flown; i++) {
            hall.model.preparing().start(press(hall, 0));
            hall.model.air().stop(press(hall, 560 + 11 * i));
            hall.model.landing().end(LandingEnd.MOTOR_TURNING);
            hall.model.landing().done();
            hall.clock.forward(900);
        }
        hall.model.load();
    }

    private static Screen screen(String name, boolean evening, Consumer<HallBench> after) {
        return new Screen(name, tools -> make(tools, evening, after));
    }

    private static Parent make(Tools tools, boolean evening, Consumer<HallBench> after) {
        try {
            Path folder = Files.createTempDirectory("hall");
            HallBench hall = new HallBench(
                    folder.resolve("hall.rafterbook"),
                    tools,
                    (rigged, motor) -> evening
                            ? MarginText.Answer.of(
                                    0.05 + 0.01 * rigged.version().number())
                            : MarginText.NO_GEOMETRY);
            if (evening) {
                fly(hall);
            }
            hall.model.load();
            after.accept(hall);
            return hall.shell;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static TypedValue typed(Quantity quantity, String text) {
        return QuantityParser.typed(quantity, DisplayUnits.METRIC).read(text).orThrow();
    }

    private static final long BEGIN = System.nanoTime() - 402_300_000_000L;

    private static Press press(HallBench hall, double seconds) {
        return new Press(
                BEGIN + Math.round(seconds * 1e9), hall.clock.instant().plusMillis(Math.round(seconds * 1000)));
    }

    private static void fly(HallBench hall) {
        String teasel = hall.desk.addModel("Teasel").id();
        hall.desk.visit().add("Saltmarsh Sports Hall", typed(Quantity.HEIGHT, "9.4"), typed(Quantity.HEIGHT, "12"));
        String venue = Objects.requireNonNull(hall.desk.evening().venue()).id();
        hall.desk.visit().addMark(venue, "lamps", typed(Quantity.HEIGHT, "7.9"), true);
        hall.desk.visit().addMark(venue, "beams", typed(Quantity.HEIGHT, "9.4"), true);
        hall.desk.visit().air(typed(Quantity.TEMPERATURE, "19.4"), typed(Quantity.HUMIDITY, "41"), null);
        SettingDef wing = set(hall, teasel, "Wing position", "LENGTH", "mm", 0.001, Setting.of(0.149));
        set(hall, teasel, "Wing incidence", "ANGLE", "°", Math.toRadians(0.25), Setting.of(Math.toRadians(2.5)));
        set(hall, teasel, "Tailplane incidence", "ANGLE", "°", Math.toRadians(0.25), Setting.of(Math.toRadians(-0.5)));
        set(hall, teasel, "Rudder", "ANGLE", "°", Math.toRadians(0.5), Setting.of(Math.toRadians(3)));
        set(hall, teasel, "Ballast at the nose", "MASS", "g", 1e-5, Setting.of(6e-5));
        Motor motor =
                hall.desk.winding().addMotor("M16", typed(Quantity.LENGTH, "340 mm"), typed(Quantity.MASS, "1.04 g"));
        hall.desk.winding().addMotor("M17", typed(Quantity.LENGTH, "341 mm"), typed(Quantity.MASS, "1.05 g"));
        double[] times = {542, 571, 527, 598};
        for (int i = 0; i < times.length; i++) {
            Wind wind = hall.desk
                    .winding()
                    .keep(null, new WindForm(motor.id(), 1980.0, 110.0, 0.0041, 0.0024 + 1e-4 * i, null, Map.of()));
            hall.model.load();
            hall.model.preparing().start(press(hall, 0));
            HeightMark beams = hall.desk.evening().heights().get(1);
            if (i == 2) {
                hall.model.air().note(press(hall, 190), FlightEventKind.TOUCHED, beams, null);
            }
            hall.model.air().stop(press(hall, times[i]));
            hall.model.landing().end(i == 2 ? LandingEnd.TOUCH : LandingEnd.MOTOR_TURNING);
            if (i < 3) {
                hall.model.landing().turnsLeft(typed(Quantity.TURNS, String.valueOf(590 + 20 * i)), failure -> {});
            }
            hall.model.landing().done();
            hall.clock.forward(1080);
            if (i == 1) {
                hall.desk.set(teasel, wing.id(), Setting.of(0.146));
            }
        }
        hall.desk.set(teasel, wing.id(), Setting.of(0.143));
        hall.model.preparing().settingProperty().set(wing.id());
        hall.desk.winding().keep(null, new WindForm(motor.id(), 1980.0, 110.0, 0.0041, 0.0026, null, Map.of()));
    }

    private static SettingDef set(
            HallBench hall, String model, String label, String quantity, String unit, double step, Setting value) {
        SettingDef def = hall.book.riggings().addSetting(model, label, quantity, unit, step, step / 2, null);
        hall.desk.set(model, def.id(), value);
        return def;
    }

    private static void launch(HallBench hall) {
        hall.model.preparing().start(press(hall, 0));
        hall.model.air().note(press(hall, 185), FlightEventKind.TOP_OF_CLIMB, null, null);
        hall.model
                .air()
                .note(
                        press(hall, 192),
                        FlightEventKind.TOUCHED,
                        hall.desk.evening().heights().get(0),
                        null);
        hall.model.air().note(press(hall, 193), FlightEventKind.STALLED, null, null);
        hall.model.air().note(press(hall, 196), FlightEventKind.RECOVERED, null, null);
    }
}
