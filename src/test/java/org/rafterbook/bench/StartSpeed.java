package org.rafterbook.bench;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.rafterbook.logbook.PerformanceLogbook;

/**
 * How long from the start of the process until the window shows today's session, beside an empty JavaFX window: fresh
 * processes of one JDK in turn. {@code StartSpeed [FLIGHTS [ROUNDS]]}; {@code -Dbench.display=true} uses the display
 * there is instead of none. Where {@code mvn package} has left {@code target/rafterbook/rafterbook.jar}, that is started: once
 * as the jar, once with what the launcher beside it tells the virtual machine.
 */
public final class StartSpeed {

    private static final Path JAR = Path.of("target", "rafterbook", "rafterbook.jar");
    private static final Path LAUNCHER = Path.of("src", "main", "launch", "rafterbook");

    private StartSpeed() {}

    public static void main(String[] args) throws Exception {
        int flights = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        int rounds = args.length > 1 ? Integer.parseInt(args[1]) : 9;
        Path home = Files.createTempDirectory("start-speed");
        Path logbook = home.resolve("Documents").resolve("Rafterbook").resolve("flights.rafterbook");
        Files.createDirectories(logbook.getParent());
        PerformanceLogbook.make(logbook, flights, LocalDate.now());
        double[] empty = new double[rounds];
        double[] window = new double[rounds];
        double[] session = new double[rounds];
        double[] launched = new double[rounds];
        List<String> launching = launching(home);
        for (int i = -1; i < rounds; i++) { // the first round only warms the disk
            int at = Math.max(i, 0);
            empty[at] = start(home, "empty", List.of()).get(0);
            List<Double> program = start(home, "program", List.of());
            window[at] = program.get(0);
            session[at] = program.get(1);
            launched[at] = start(home, "program", launching).get(1);
        }
        System.out.println(Machine.now());
        System.out.printf(
                Locale.ROOT,
                "%,d flights, medians of %d: empty window %.0f ms, first frame %.0f ms (%.2f times), today's session"
                        + " %.0f ms (%.2f times), by the launcher %.0f ms (%.2f times)%n",
                flights,
                rounds,
                median(empty),
                median(window),
                median(window) / median(empty),
                median(session),
                median(session) / median(empty),
                median(launched),
                median(launched) / median(empty));
    }

    /** What the launcher tells the virtual machine, with an archive of classes as the first close of the window leaves it. */
    private static List<String> launching(Path home) throws IOException, InterruptedException {
        Path archive = home.resolve("classes.jsa");
        List<String> options = new ArrayList<>();
        for (String word : Files.readString(LAUNCHER).split("\\s+")) {
            if (word.startsWith("-X") && !word.contains("$")) {
                options.add(word);
            }
        }
        List<String> making = new ArrayList<>(options);
        making.add("-XX:ArchiveClassesAtExit=" + archive);
        start(home, "archive", making);
        options.add("-XX:SharedArchiveFile=" + archive);
        return options;
    }

    /** Milliseconds from the start of the process to each line it says. */
    private static List<Double> start(Path home, String what, List<String> options)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.home=" + home,
                "-Dprism.lcdtext=false"));
        command.addAll(options);
        if (!Boolean.getBoolean("bench.display")) {
            command.addAll(List.of(
                    "-Dglass.platform=Monocle",
                    "-Dmonocle.platform=Headless",
                    "-Dheadless.geometry=1920x1080-32",
                    "-Dprism.order=sw"));
        }
        command.addAll(List.of("-cp", classPath(home), FirstFrame.class.getName(), what));
        List<Double> said = new ArrayList<>();
        long begin = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            while (lines.readLine() != null) {
                said.add((System.nanoTime() - begin) / 1e6);
            }
        }
        process.waitFor();
        return said;
    }

    /**
     * The program's own jar and libraries first, as a flyer starts it; this bench, which is only asked for once, last, as a
     * jar: folders are never archived.
     */
    private static String classPath(Path home) throws IOException {
        List<String> first = new ArrayList<>();
        List<String> last = new ArrayList<>();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            if (entry.endsWith("test-classes")) {
                last.add(benchJar(Path.of(entry), home.resolve("bench.jar")).toString());
            } else if (Files.isDirectory(Path.of(entry)) && Files.exists(JAR)) {
                first.add(0, JAR.toString());
            } else {
                first.add(entry);
            }
        }
        first.addAll(last);
        return String.join(File.pathSeparator, first);
    }

    private static Path benchJar(Path classes, Path jar) throws IOException {
        if (!Files.exists(jar)) {
            Path own = Path.of("org", "rafterbook", "bench");
            try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
                    DirectoryStream<Path> files = Files.newDirectoryStream(classes.resolve(own), "*.class")) {
                for (Path file : files) {
                    out.putNextEntry(new JarEntry("org/rafterbook/bench/" + file.getFileName()));
                    Files.copy(file, out);
                }
            }
        }
        return jar;
    }

    static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
