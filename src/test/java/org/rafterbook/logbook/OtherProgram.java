package org.rafterbook.logbook;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.units.UserError;

/** A second process at a logbook: opens it, reads it, or enters flights until it is killed. */
final class OtherProgram {

    private final Process process;
    private final BufferedReader lines;

    private OtherProgram(Process process) {
        this.process = process;
        this.lines = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    static OtherProgram start(String... arguments) throws IOException {
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                // A killed one leaves the driver's library behind, which then goes with the test's folder.
                "-Dorg.sqlite.tmpdir=" + Path.of(arguments[1]).getParent(),
                "-cp",
                classPath,
                OtherProgram.class.getName()));
        command.addAll(List.of(arguments));
        return new OtherProgram(new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    /** The next line it prints, null when it has ended. */
    String line() throws IOException {
        return lines.readLine();
    }

    void kill() throws InterruptedException {
        // Unlike the process itself its handle leaves what was printed readable.
        process.toHandle().destroyForcibly();
        process.waitFor();
    }

    public static void main(String[] arguments) {
        Path file = Path.of(arguments[1]);
        switch (arguments[0]) {
            case "open" -> System.out.println(open(file));
            case "venues" -> {
                try (Logbook logbook = Logbook.open(file, Mode.READ_ONLY)) {
                    Samples.list(logbook, r -> r.all(Venue.class)).forEach(venue -> System.out.println(venue.name()));
                }
            }
            case "fly" -> fly(file);
            default -> throw new IllegalArgumentException(arguments[0]);
        }
    }

    private static String open(Path file) {
        try (Logbook logbook = Logbook.open(file, Mode.CREATE)) {
            return logbook.readOnly() ? "opened to read" : "opened";
        } catch (UserError e) {
            return e.sentence();
        }
    }

    /** Prints each flight's id when its entry has come back as kept. */
    private static void fly(Path file) {
        Logbook logbook = Logbook.open(file, Mode.CREATE);
        Session session = logbook.enter("Session", w -> w.insert(Samples.session(null, Samples.DAY)));
        for (int ordinal = 1; ; ordinal++) {
            int number = ordinal;
            System.out.println(logbook.enter("Flight", w -> w.insert(Samples.flight(session, number, 600.0)))
                    .id());
        }
    }
}
