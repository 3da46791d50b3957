package org.rafterbook.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.rafterbook.app.WindowRobot;
import org.rafterbook.logbook.PerformanceLogbook;
import org.rafterbook.ui.Fx;

/**
 * From the key that starts the watch to the painted frame in which it runs, on a logbook of many flights and an evening
 * of twenty: {@code WatchSpeed [FLIGHTS [LAUNCHES]]}. The key goes in where a keyboard's would, at any moment of a frame;
 * each launch is taken back with Ctrl+Z.
 */
public final class WatchSpeed {

    private static final int WARM_UP = 10;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private WatchSpeed() {}

    public static void main(String[] args) throws Exception {
        int flights = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        int launches = args.length > 1 ? Integer.parseInt(args[1]) : 200;
        Path file = Files.createTempDirectory("watch-speed").resolve("flights.rafterbook");
        PerformanceLogbook.make(file, flights, LocalDate.now());
        double[] millis = new double[launches];
        double[] busy = new double[launches];
        double first;
        try (WindowRobot window = WindowRobot.open(file)) {
            window.sees("20 flights").sees("Start the watch");
            Thread.sleep(2000);
            Random random = new Random(1);
            first = launch(window, random)[0];
            for (int i = -WARM_UP; i < launches; i++) {
                double[] one = launch(window, random);
                millis[Math.max(i, 0)] = one[0];
                busy[Math.max(i, 0)] = one[1];
            }
        }
        Arrays.sort(millis);
        System.out.println(Machine.now());
        System.out.printf(
                Locale.ROOT,
                "%,d flights, %d launches: median %.1f ms, 99th percentile %.1f ms, longest %.1f ms; the very first %.1f ms;"
                        + " of the median the JavaFX thread works %.1f ms%n",
                flights,
                launches,
                millis[launches / 2],
                millis[(int) Math.ceil(launches * 0.99) - 1],
                millis[launches - 1],
                first,
                StartSpeed.median(busy));
        System.exit(0);
    }

    private static double[] launch(WindowRobot window, Random random) throws Exception {
        Scene scene = window.window().getScene();
        Thread.sleep(100 + random.nextInt(40));
        CompletableFuture<double[]> shown = new CompletableFuture<>();
        Fx.run(() -> {
            long pressed = System.nanoTime();
            long thread = Thread.currentThread().getId();
            long worked = THREADS.getThreadCpuTime(thread);
            Painted.when(
                    scene,
                    () -> runs(scene),
                    at -> shown.complete(
                            new double[] {(at - pressed) / 1e6, (THREADS.getThreadCpuTime(thread) - worked) / 1e6}));
            Robot keyboard = new Robot();
            keyboard.keyPress(KeyCode.SPACE);
            keyboard.keyRelease(KeyCode.SPACE);
        });
        double[] millis = shown.get(10, TimeUnit.SECONDS);
        window.sees("undo “launch");
        window.together(KeyCode.CONTROL, KeyCode.Z).sees("Start the watch").sees("20 flights");
        return millis;
    }

    private static boolean runs(Scene scene) {
        Node watch = scene.getRoot().lookup(".watch");
        return watch != null && watch.getScene() == scene && watch.isVisible();
    }
}
