package org.rafterbook.ui.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Parent;
import javafx.scene.control.CheckBox;
import javafx.scene.input.KeyCode;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Surface;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.logbook.Mode;
import org.rafterbook.rules.ClassSheet;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.Screen;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Shell;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Book;
import org.rafterbook.work.DemoFiles;
import org.rafterbook.work.Rigged;

/** Pictures of the Bench in each of its states, on the demo season. */
public final class BenchScreens {

    private static @Nullable Path season;

    private BenchScreens() {}

    public static List<Screen> all() {
        return List.of(
                new Screen("bench-empty", tools -> shell(tools, empty(), "", b -> {})),
                on("bench-one-wing", "Teasel"),
                on("bench-two-wings", "Quire"),
                on("bench-three-wings", "Sallow", BenchScreens::threeWings),
                new Screen("bench-refused", tools -> {
                    Parent shell = shell(tools, demo(), "Quire", b -> {});
                    tools.errors()
                            .show(UserError.badInput("crossed.json: surface 'wing', ribs number 3 lies nearer the"
                                    + " middle than the rib before it; ribs run outward."));
                    return shell;
                }),
                on("bench-turned", "Teasel", BenchScreens::wish, "P", "←", "←", "←"),
                on("bench-sketches", "Quire", BenchScreens::sketches, "X"),
                designs("bench-designs"),
                on("bench-where", "Quire", BenchScreens::wish, "H"),
                on("bench-airframe", "Teasel", BenchScreens::wish, "A"),
                on("bench-surface", "Teasel", b -> {}, "A", "1"),
                on("bench-surface-new", "Teasel", b -> {}, "A", "S", "Enter"),
                on("bench-masses", "Teasel", BenchScreens::wish, "A", "P"),
                on("bench-weighing", "Teasel", b -> {}, "A", "W", "Enter"),
                on("bench-build", "Teasel", b -> {}, "A", "B"),
                on("bench-setting", "Teasel", b -> {}, "A", "T", "Enter"),
                on("bench-wished", "Teasel", b -> {}, "A", "G"),
                on("bench-class", "Teasel", BenchScreens::wish, "A", "L"),
                on("bench-zero", "Teasel", b -> {}, "A", "Z"),
                on("bench-always", "Teasel", b -> {}, "A", "V"),
                on("bench-that-time", "Teasel", b -> {}, "F", "Enter"),
                on("bench-new-model", "Teasel", b -> {}, "N", "Enter"));
    }

    private static Screen on(String name, String model) {
        return on(name, model, b -> {});
    }

    private static Screen on(String name, String model, Consumer<Book> before, String... keys) {
        return new Screen(name, tools -> shell(tools, demo(), model, before), scene -> {
            BenchPlace bench = (BenchPlace) scene.getRoot().getProperties().get("bench");
            for (String key : keys) {
                Objects.requireNonNull(bench.keys().getValue().find(key), key).run();
                Fx.layOut(scene);
            }
        });
    }

    /** A wished margin, a class sheet of invented limits and a version marked as well-behaved. */
    private static void wish(Book book) {
        book.riggings().models().forEach(m -> {
            book.bench().classes().wish(m.id(), 0.04, 0.08);
            book.bench()
                    .classes()
                    .keep(
                            m.id(),
                            new ClassSheet(
                                    "",
                                    "Hall class",
                                    "club rules",
                                    2026,
                                    0.0016,
                                    0.0016,
                                    0.45,
                                    0.12,
                                    null,
                                    null,
                                    null));
            List<Rigged> strip = book.riggings().strip(m.id());
            book.bench().mark(strip.get(strip.size() / 2).version().id(), true);
        });
    }

    private static void sketches(Book book) {
        wish(book);
        Rigged now = book.riggings().models().stream()
                .filter(m -> m.name().equals("Quire"))
                .map(m -> book.riggings().now(m.id()))
                .findFirst()
                .orElseThrow();
        for (double rise : new double[] {0.052, 0.092}) {
            now.settings().stream()
                    .filter(s -> "upper.rise_mm".equals(s.path()))
                    .forEach(s -> book.riggings().sketch(now.version().id(), Map.of(s.id(), Setting.of(rise)), null));
        }
    }

    /** A model of three wings over each other, each a little ahead of the one below. */
    private static void threeWings(Book book) {
        List<Surface> surfaces = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            surfaces.add(Surface.symmetric(
                    i == 0 ? "wing" : "wing" + (i + 1),
                    Role.WING,
                    -0.02 * i,
                    0.07 * i,
                    0.035,
                    0.04,
                    List.of(new Rib(0, 0, 0.11, 0, 0), new Rib(0.21, 0.02, 0.07, 0.04, 0))));
        }
        surfaces.add(Surface.symmetric("tail", Role.TAILPLANE, 0.34, 0, 0, 0, Planforms.rectangle(0.27, 0.08)));
        book.sheets()
                .take(new AirframeSheet(
                        "Sallow", "", new Airframe(surfaces, List.of(), 0.04, new MotorPlace(0.001, 0.12))));
    }

    /** Designs of every model side by side. */
    private static Screen designs(String name) {
        Screen untouched = on(name, "Teasel", BenchScreens::designs, "X");
        return new Screen(name, untouched.make(), scene -> {
            untouched.after().act(scene);
            scene.getRoot().lookupAll(".check-box").forEach(box -> ((CheckBox) box).setSelected(true));
            Fx.key(scene, KeyCode.ENTER, "\r");
        });
    }

    private static void designs(Book book) {
        sketches(book);
        book.riggings().models().stream().filter(m -> !m.name().equals("Quire")).forEach(m -> {
            Rigged now = book.riggings().now(m.id());
            SettingDef tail = now.settings().stream()
                    .filter(s -> "tail.incidence_deg".equals(s.path()))
                    .findFirst()
                    .orElseThrow();
            book.riggings().sketch(now.version().id(), Map.of(tail.id(), Setting.of(-0.02)), null);
        });
    }

    private static Parent shell(Tools tools, Path file, String model, Consumer<Book> before) {
        Book book = Book.open(file, Mode.CREATE, Clock.fixed(Instant.parse("2026-02-20T19:00:00Z"), ZoneOffset.UTC));
        before.accept(book);
        BenchPlace bench = new BenchPlace(tools, book, DisplayUnits.METRIC);
        Map<PlaceId, Supplier<? extends Place>> makers = new EnumMap<>(PlaceId.class);
        for (PlaceId id : PlaceId.values()) {
            makers.put(id, () -> bench);
        }
        tools.showing().set(PlaceId.BENCH);
        Shell shell = new Shell(tools, makers);
        shell.getProperties().put("bench", bench);
        bench.model().models().stream().filter(m -> m.name().equals(model)).forEach(bench.model()::choose);
        return shell;
    }

    private static Path empty() {
        return folder().resolve("a.rafterbook");
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("bench");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A copy of the demo season, which is taken in once. */
    private static Path demo() {
        if (season == null) {
            season = folder().resolve("season.rafterbook");
            try (Book book = Book.open(season, Mode.CREATE, Clock.systemUTC())) {
                DemoFiles.into(book);
            }
        }
        Path copy = folder().resolve("a.rafterbook");
        try (Book book = Book.open(season, Mode.READ_ONLY, Clock.systemUTC())) {
            book.backup(copy);
        }
        return copy;
    }
}
