package org.rafterbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntConsumer;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Surface;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.logbook.Mode;
import org.rafterbook.stability.Stability;
import org.rafterbook.work.Book;
import org.rafterbook.work.Progress;
import org.rafterbook.work.Rigged;
import org.rafterbook.work.Surroundings;

/**
 * How long the Bench takes for what follows the pointer, beside one solve of the same two-wing lattice in the same run,
 * and for 200 versions of a season that nobody has looked at yet.
 */
public final class LiveSpeed {

    private static final int VERSIONS = 200;

    private LiveSpeed() {}

    public static void main(String[] args) throws IOException {
        Path file = Files.createTempDirectory("live").resolve("a.rafterbook");
        Surroundings in = new Surroundings(1.2, "", 6, null);
        try (Book book = Book.open(file, Mode.CREATE, Clock.systemUTC())) {
            Rigged quire = book.sheets().take(new AirframeSheet("Quire", "", plane()));
            SettingDef place = setting(quire, "upper.edge_aft_mm");
            SettingDef angle = setting(quire, "tail.incidence_deg");
            double solve = median(i -> Stability.solve(plane()));
            double slid = median(i -> book.bench().look(quire, Map.of(place.id(), Setting.of(0.1 + i * 1e-5)), in));
            double turned = median(i -> book.bench().look(quire, Map.of(angle.id(), Setting.of(i * 1e-4)), in));
            say("one solve of the lattice", solve, solve);
            say("a wing slid: margin, band, trim, touchiness", slid, solve);
            say("an incidence turned: the same", turned, solve);
            for (int i = 0; i < VERSIONS; i++) {
                book.riggings().sketch(quire.version().id(), Map.of(place.id(), Setting.of(0.08 + i * 3e-4)), null);
            }
        }
        for (String when : List.of("the first time", "opened again")) {
            try (Book book = Book.open(file, Mode.EXISTING, Clock.systemUTC())) {
                long from = System.nanoTime();
                int versions = book.margins().computeAll(Progress.none());
                System.out.printf(
                        Locale.ROOT, "%d versions, %s: %.2f s%n", versions, when, (System.nanoTime() - from) / 1e9);
            }
        }
    }

    private static void say(String what, double seconds, double solve) {
        System.out.printf(Locale.ROOT, "%-46s %7.2f ms, %5.2f solves%n", what, seconds * 1000, seconds / solve);
    }

    private static double median(IntConsumer work) {
        double[] seconds = new double[60];
        for (int i = 0; i < 100 + seconds.length; i++) {
            long from = System.nanoTime();
            work.accept(i);
            seconds[i % seconds.length] = (System.nanoTime() - from) / 1e9;
        }
        Arrays.sort(seconds);
        return seconds[seconds.length / 2];
    }

    private static SettingDef setting(Rigged rigged, String path) {
        return rigged.settings().stream()
                .filter(s -> path.equals(s.path()))
                .findFirst()
                .orElseThrow();
    }

    private static Airframe plane() {
        return new Airframe(
                List.of(
                        Surface.symmetric(
                                "upper",
                                Role.WING,
                                0.11,
                                0.09,
                                0.045,
                                0.04,
                                Planforms.roundedTips(0.38, 0.094, 0.05, 0.25)),
                        Surface.symmetric(
                                "lower",
                                Role.WING,
                                0.13,
                                -0.01,
                                0.035,
                                0.04,
                                Planforms.roundedTips(0.34, 0.088, 0.05, 0.25)),
                        Surface.symmetric("tail", Role.TAILPLANE, 0.43, 0.03, 0, 0, Planforms.rectangle(0.26, 0.08))),
                List.of(
                        new MassItem("upper", 0.0005, 0.15, 0.09),
                        new MassItem("lower", 0.0004, 0.17, 0),
                        new MassItem("rest", 0.0016, 0.14, 0)),
                null,
                new MotorPlace(0.0013, 0.14));
    }
}
