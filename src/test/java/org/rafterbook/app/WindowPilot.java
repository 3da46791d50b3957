package org.rafterbook.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.input.KeyCode;

/**
 * The program in a process of its own, which starts the watch in the Hall and says when the flight is in the air; it is
 * killed there.
 */
final class WindowPilot {

    private static final String IN_THE_AIR = "in the air";
    private static final long LONGEST_MS = 60_000;

    private WindowPilot() {}

    /** Lets one flight go in another process and kills that while the watch runs. */
    static void launchAndKill(Path home) throws IOException, InterruptedException {
        List<String> options = new ArrayList<>(List.of("-Duser.home=" + home, "-Duser.language=en"));
        for (String key : List.of(
                "glass.platform",
                "monocle.platform",
                "headless.geometry",
                "prism.order",
                "prism.lcdtext",
                "testfx.robot",
                "testfx.headless",
                "java.awt.headless",
                "user.timezone")) {
            if (System.getProperty(key) != null) {
                options.add("-D" + key + "=" + System.getProperty(key));
            }
        }
        Process process = new ProcessBuilder(CommandRun.java(options, WindowPilot.class))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            String said = lines.readLine();
            if (!IN_THE_AIR.equals(said)) {
                throw new AssertionError("the other process said " + said);
            }
        } finally {
            process.destroyForcibly();
            process.waitFor();
        }
    }

    public static void main(String[] args) {
        try {
            new Thread(() -> Rafterbook.main(new String[0]), "the program").start();
            WindowRobot.until("the toolkit", WindowPilot::toolkitRuns);
            WindowRobot window = WindowRobot.atTheRunningProgram();
            window.sees("Start the watch")
                    .sees("Quire")
                    .press(KeyCode.SPACE)
                    .sees("Landed: stop")
                    .sees("kept");
            System.out.println(IN_THE_AIR);
            Thread.sleep(LONGEST_MS);
        } catch (Throwable failure) {
            failure.printStackTrace();
        }
        Runtime.getRuntime().halt(1); // nobody has killed it
    }

    private static boolean toolkitRuns() {
        try {
            Platform.runLater(() -> {});
            return true;
        } catch (IllegalStateException notYet) {
            return false;
        }
    }
}
