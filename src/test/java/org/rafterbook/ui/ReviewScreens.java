package org.rafterbook.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Recovered;
import org.rafterbook.logbook.Mode;
import org.rafterbook.ui.review.ReviewView;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Shell;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.work.Book;
import org.rafterbook.work.DemoFiles;
import org.rafterbook.work.MarginPercent;
import org.rafterbook.work.Progress;
import org.rafterbook.work.ReviewDesk;
import org.rafterbook.work.ReviewEvenings;
import org.rafterbook.work.Rigged;
import org.rafterbook.work.Trials;

/** Pictures of Review: a season, one evening, flights without a change, no flights, settings moved together. */
public final class ReviewScreens {

    private static final String[] NOTES = {
        "Floats at the top, long slow circle.",
        "Steady glide, landed by the piano.",
        "Stalls once under power, then settles.",
        "Drifts towards the stage.",
        "As steady as before.",
        ""
    };

    private ReviewScreens() {}

    static List<Screen> all() {
        return List.of(
                screen("review-rich", ReviewScreens::season, scene -> {}),
                screen("review-picked", ReviewScreens::season, ReviewScreens::pick),
                screen("review-evening", ReviewScreens::evening, scene -> {}),
                screen("review-thin", evenings -> evenings.fly(512), scene -> {}),
                screen("review-empty", evenings -> {}, scene -> {}),
                screen("review-together", ReviewScreens::together, scene -> {}),
                screen("review-trial-open", e -> trial(e, 3, false), press(KeyCode.Y)),
                screen("review-trial-judged", e -> trial(e, 6, true), press(KeyCode.Y)),
                screen("review-own-trial", ReviewScreens::evening, press(KeyCode.O)),
                demo("review-demo", scene -> {}),
                demo("review-demo-setting", scene -> model(scene)),
                demo("review-demo-handling", press(KeyCode.G)),
                demo("review-demo-basis", press(KeyCode.R)),
                demo("review-demo-back", press(KeyCode.B)),
                demo("review-demo-charts", press(KeyCode.K)));
    }

    private static Screen.After press(KeyCode key) {
        return scene -> Fx.key(scene, key, key.getName().toLowerCase(java.util.Locale.ROOT));
    }

    /** Against another axis than the margin. */
    private static void model(Scene scene) {
        if (scene.getRoot().lookup(".review-right .combo-box") instanceof javafx.scene.control.ComboBox<?> box) {
            box.getSelectionModel().select(1);
        }
    }

    private static Screen demo(String name, Screen.After after) {
        return new Screen(name, tools -> ReviewScreens.demo(tools), after);
    }

    private static @Nullable Path demoFile;

    /** The demo season in a window on Review. */
    private static Parent demo(Tools tools) {
        Book book = Book.open(demoCopy(), Mode.EXISTING, Clock.systemDefaultZone());
        ReviewDesk desk = book.review();
        ReviewView view = new ReviewView(desk, tools);
        Shell shell = shell(tools, view);
        desk.models().stream().filter(m -> m.name().equals("Teasel")).forEach(m -> view.show(m.id()));
        return shell;
    }

    /** A logbook of the demo season for a picture of its own; it is imported once and copied. */
    public static Path demoCopy() {
        try {
            if (demoFile == null) {
                demoFile = Files.createTempDirectory("review").resolve("demo.rafterbook");
                try (Book book = Book.open(demoFile, Mode.CREATE, Clock.systemDefaultZone())) {
                    DemoFiles.into(book);
                    ReviewDesk desk = book.review();
                    desk.models().forEach(m -> desk.review(m.id(), true, Progress.none()));
                }
            }
            Path copy = Files.createTempDirectory("review").resolve("demo.rafterbook");
            Files.copy(demoFile, copy);
            return copy;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An evening, then a trial of its two values of which so many flights are flown. */
    private static void trial(ReviewEvenings evenings, int flown, boolean judged) {
        evening(evenings);
        String model = evenings.model().id();
        SettingDef wing = evenings.book().riggings().now(model).settings().get(0);
        Trials trials = evenings.book().trials();
        evenings.evening("2026-01-27");
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 3);
        for (int i = 0; i < flown; i++) {
            Rigged set = trials.setNext(model);
            Double at = set.values().get(wing.id()).number();
            evenings.fly(at != null && at > 0.148 ? 502 + 3 * i : 541 + 4 * i);
        }
        if (judged) {
            trials.judge(model, null);
        }
    }

    private static void pick(Scene scene) {
        Fx.key(scene, KeyCode.H, "h");
        Fx.key(scene, KeyCode.LEFT, "");
        for (int i = 0; i < 20; i++) {
            Fx.key(scene, KeyCode.LEFT, "");
        }
        Fx.key(scene, KeyCode.ENTER, "");
    }

    private static Screen screen(String name, Consumer<ReviewEvenings> fill, Screen.After after) {
        return new Screen(name, tools -> shell(tools, fill), after);
    }

    private static Parent shell(Tools tools, Consumer<ReviewEvenings> fill) {
        try {
            ReviewEvenings evenings =
                    new ReviewEvenings(Files.createTempDirectory("review").resolve("a.rafterbook"));
            fill.accept(evenings);
            return shell(tools, evenings);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A window on Review; margins follow the wing's place, 100 mm chord. */
    public static Shell shell(Tools tools, ReviewEvenings evenings) {
        MarginPercent margins = (version, motor, fraction) -> {
            var rigged = evenings.book().riggings().version(version);
            return rigged.settings().stream()
                    .filter(d -> d.label().equals("wing edge"))
                    .map(d -> rigged.values().get(d.id()))
                    .filter(java.util.Objects::nonNull)
                    .map(Setting::number)
                    .filter(java.util.Objects::nonNull)
                    .findFirst()
                    .map(x -> 5.2 + (x - 0.140) * 700)
                    .orElse(null);
        };
        return shell(tools, new ReviewView(new ReviewDesk(evenings.book(), margins), tools));
    }

    private static Shell shell(Tools tools, ReviewView view) {
        Map<PlaceId, Supplier<? extends Place>> makers = new EnumMap<>(PlaceId.class);
        for (PlaceId id : PlaceId.values()) {
            makers.put(id, () -> view);
        }
        tools.showing().set(PlaceId.REVIEW);
        return new Shell(tools, makers);
    }

    /** A-B-A-B of eight flights, the last touched and cut short. */
    public static void evening(ReviewEvenings evenings) {
        SettingDef wing = evenings.setting("wing edge", "LENGTH", "mm");
        evenings.trim(wing, 0.149);
        evenings.fly(500);
        evenings.fly(510, Ending.CLEAN, null, "Floats at the top.", 1400);
        evenings.trim(wing, 0.146);
        evenings.fly(540);
        evenings.fly(550);
        evenings.trim(wing, 0.149);
        evenings.fly(505);
        evenings.fly(495, Ending.CLEAN, null, "Dropped a wing and did not come out.", 1400, Recovered.NO);
        evenings.trim(wing, 0.146);
        evenings.fly(545, Ending.CLEAN, null, "", 1400, Recovered.YES);
        evenings.fly(560, Ending.TOUCHED, CutShort.YES, "Touched the lamp.", 1400);
    }

    private static void together(ReviewEvenings evenings) {
        SettingDef propeller = evenings.setting("propeller", "TEXT", "");
        SettingDef loop = evenings.setting("loop", "LENGTH", "mm");
        evenings.trim(Map.of(propeller.id(), Setting.of("320"), loop.id(), Setting.of(0.33)), null);
        evenings.fly(500);
        evenings.fly(505);
        evenings.trim(Map.of(propeller.id(), Setting.of("300"), loop.id(), Setting.of(0.36)), null);
        evenings.fly(520);
        evenings.fly(515);
    }

    /** Ten evenings of about six flights with four settings; effects and times are drawn from seed 7. */
    private static void season(ReviewEvenings evenings) {
        Random random = new Random(7);
        SettingDef wing = evenings.setting("wing edge", "LENGTH", "mm");
        SettingDef incidence = evenings.setting("wing incidence", "ANGLE", "°");
        SettingDef ballast = evenings.setting("ballast", "MASS", "g");
        SettingDef rudder = evenings.setting("rudder", "ANGLE", "°");
        double deg = Math.PI / 180;
        double[] now = {0.149, 3 * deg, 0.00009, 3 * deg};
        double[][] values = {
            {0.149, 0.146, 0.143}, {3 * deg, 2.5 * deg, 3.5 * deg}, {0.00009, 0.00006}, {3 * deg, 2 * deg}
        };
        SettingDef[] defs = {wing, incidence, ballast, rudder};
        String[] days = {"11-11", "11-18", "11-25", "12-02", "12-09", "12-16", "12-30", "01-06", "01-13", "01-20"};
        set(evenings, defs, now);
        for (int d = 0; d < days.length; d++) {
            evenings.evening((days[d].startsWith("1") ? "2025-" : "2026-") + days[d]);
            double day = random.nextGaussian() * 0.03;
            int which = d % 4;
            double was = now[which];
            double other = values[which][(int) (1 + d / 4) % values[which].length];
            for (int i = 0; i < 6; i++) {
                now[which] = i / 2 % 2 == 0 ? was : other;
                set(evenings, defs, now);
                double ln = Math.log(520)
                        + day
                        + (0.149 - now[0]) * 22
                        - Math.abs(now[1] / deg - 2.6) * 0.05
                        + random.nextGaussian() * 0.035;
                boolean touch = random.nextInt(8) == 0;
                evenings.fly(
                        Math.exp(ln) * (touch ? 0.96 : 1),
                        touch ? Ending.TOUCHED : Ending.CLEAN,
                        touch ? CutShort.YES : null,
                        NOTES[random.nextInt(NOTES.length)],
                        1400 + random.nextInt(40),
                        random.nextInt(3) == 0 ? random.nextInt(4) == 0 ? Recovered.NO : Recovered.YES : null);
            }
            now[which] = other;
        }
    }

    private static void set(ReviewEvenings evenings, SettingDef[] defs, double[] values) {
        Map<String, Setting> all = new java.util.HashMap<>();
        for (int i = 0; i < defs.length; i++) {
            all.put(defs[i].id(), Setting.of(values[i]));
        }
        evenings.trim(all, null);
    }
}
