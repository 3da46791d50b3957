package org.rafterbook.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.rafterbook.app.WindowRobot;
import org.rafterbook.logbook.PerformanceLogbook;
import org.rafterbook.ui.Fx;

/**
 * How long the program's own code holds the JavaFX thread, from entry to exit, on a logbook of many flights: while the
 * review of a model with about a thousand flights is opened, notes are searched and the list of flights is scrolled.
 * {@code ThreadHold [FLIGHTS [hall]]}, with a second word the Hall alone.
 */
public final class ThreadHold {

    private ThreadHold() {}

    public static void main(String[] args) throws Exception {
        int flights = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        Path file = Files.createTempDirectory("thread-hold").resolve("flights.rafterbook");
        PerformanceLogbook.make(file, flights, LocalDate.now());
        System.out.println(Machine.now());
        try (WindowRobot window = WindowRobot.open(file);
                HoldSampler holds = new HoldSampler(Fx.on(Thread::currentThread))) {
            window.sees("20 flights").sees("Start the watch");
            Thread.sleep(3000);
            holds.tell("start");
            if (args.length < 2) {
                review(window, holds);
                season(window, holds);
                window.press(KeyCode.F1);
            }
            hall(window, holds);
        }
        System.exit(0);
    }

    private static void review(WindowRobot window, HoldSampler holds) throws InterruptedException {
        for (int i = 1; i <= 3; i++) {
            window.press(KeyCode.F4).sees("90 % intervals");
            settle(window);
            holds.tell("review opened, time " + i);
            window.press(KeyCode.F1);
            Thread.sleep(500);
            holds.tell("back in the Hall");
        }
        window.press(KeyCode.F4);
        Thread.sleep(1000);
        holds.tell("review shown again");
        for (String word : new String[] {"lamp", "steady", "zeppelin"}) {
            window.press(KeyCode.SLASH).type(word);
            Thread.sleep(300);
            window.press(KeyCode.ESCAPE);
            Thread.sleep(300);
            holds.tell("notes searched for " + word);
        }
        window.press(KeyCode.H);
        for (int i = 0; i < 40; i++) {
            window.press(i < 20 ? KeyCode.LEFT : KeyCode.RIGHT);
        }
        holds.tell("history stepped through");
    }

    private static void season(WindowRobot window, HoldSampler holds) throws InterruptedException {
        for (int i = 1; i <= 2; i++) {
            window.press(KeyCode.F5).sees("Every flight");
            settle(window);
            holds.tell("season opened, time " + i);
            window.press(KeyCode.F1);
            Thread.sleep(300);
            holds.tell("back in the Hall");
        }
        window.press(KeyCode.F5, KeyCode.L);
        Thread.sleep(1500);
        holds.tell("flights of a model listed");
        Node list = Fx.on(() -> window.window().getScene().getRoot().lookupAll(".table-view").stream()
                .filter(Node::isVisible)
                .filter(n -> "flights".equals(n.getAccessibleText()))
                .findFirst()
                .orElse(null));
        if (list != null) {
            Fx.run(list::requestFocus);
        }
        for (int i = 0; i < 60; i++) {
            window.press(i < 30 ? KeyCode.PAGE_DOWN : KeyCode.PAGE_UP);
        }
        holds.tell("flights scrolled by pages");
    }

    private static void hall(WindowRobot window, HoldSampler holds) throws InterruptedException {
        for (int i = 0; i < 5; i++) {
            window.press(KeyCode.SPACE).sees("undo “launch");
            Thread.sleep(100);
            window.press(KeyCode.SPACE).sees("How did it end?").press(KeyCode.DIGIT1);
            Thread.sleep(100);
            window.press(KeyCode.ENTER).sees("Start the watch");
        }
        holds.tell("five flights logged");
        for (int i = 0; i < 3; i++) {
            window.press(KeyCode.N);
            Thread.sleep(500);
            window.press(KeyCode.ESCAPE).sees("Start the watch");
            window.press(KeyCode.A);
            Thread.sleep(500);
            window.press(KeyCode.ESCAPE).sees("Start the watch");
            window.press(KeyCode.O);
            Thread.sleep(500);
            window.press(KeyCode.ENTER).sees("Start the watch");
        }
        holds.tell("wind, venue and last flight opened");
        for (int i = 0; i < 3; i++) {
            window.press(KeyCode.F2);
            Thread.sleep(1500);
            holds.tell("the Bench opened");
            window.press(KeyCode.F1);
            Thread.sleep(1500);
            holds.tell("back in the Hall");
        }
    }

    private static void settle(WindowRobot window) throws InterruptedException {
        for (int i = 0; i < 100 && window.showsProgress(); i++) {
            Thread.sleep(200);
        }
        Thread.sleep(3000);
    }
}
