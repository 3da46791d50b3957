package org.rafterbook.bench;

import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.rafterbook.app.Rafterbook;

/**
 * One start in a process of its own: {@code empty}, a JavaFX window with nothing in it, or {@code program}, the program on
 * its default logbook; {@code archive}, the program, ended so that an archive of its classes can be written. Prints {@code window} when the first frame is painted and {@code session} when today's flights are
 * in it, then ends.
 */
public final class FirstFrame {

    private static boolean archiving;

    private FirstFrame() {}

    public static void main(String[] args) {
        archiving = args[0].equals("archive");
        if (args[0].equals("empty")) {
            Platform.startup(FirstFrame::empty);
        } else {
            new Thread(() -> Rafterbook.main(new String[0]), "the program").start();
            watch();
        }
    }

    private static void empty() {
        Stage stage = new Stage();
        Scene scene = new Scene(new StackPane(), 1280, 800);
        stage.setScene(scene);
        Painted.when(scene, () -> true, at -> say("window"));
        Painted.when(scene, () -> true, at -> end());
        stage.show();
    }

    private static void watch() {
        while (true) {
            try {
                Platform.runLater(FirstFrame::follow);
                return;
            } catch (IllegalStateException toolkitNotYetStarted) {
                sleep();
            }
        }
    }

    private static void sleep() {
        try {
            Thread.sleep(1);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void follow() {
        Window.getWindows().addListener((ListChangeListener<Window>) change -> seen());
        seen();
    }

    private static void seen() {
        for (Window window : Window.getWindows()) {
            Scene scene = window.getScene();
            if (scene != null && scene.getProperties().putIfAbsent("seen", true) == null) {
                Painted.when(scene, () -> true, at -> say("window"));
                Painted.when(scene, () -> holdsFlights(scene.getRoot().lookup(".evening-list")), at -> {
                    say("session");
                    end();
                });
            }
        }
    }

    private static boolean holdsFlights(Node list) {
        return list != null
                && list.getAccessibleText() != null
                && list.getAccessibleText().startsWith("flight");
    }

    private static void say(String what) {
        System.out.println(what);
        System.out.flush();
    }

    private static void end() {
        if (archiving) {
            new Thread(() -> System.exit(0)).start(); // the virtual machine writes its archive on the way
        } else {
            Runtime.getRuntime().halt(0);
        }
    }
}
