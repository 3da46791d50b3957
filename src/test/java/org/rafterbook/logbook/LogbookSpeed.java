package org.rafterbook.logbook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import org.rafterbook.airframe.Model;
import org.rafterbook.flight.Session;

/**
 * Prints how long the logbook takes for what screens ask, at 10,000 and 100,000 flights, and how it grows: {@code
 * LogbookSpeed [FLIGHTS ...]}. Medians of nine, the first round thrown away.
 */
public final class LogbookSpeed {

    private LogbookSpeed() {}

    public static void main(String[] arguments) throws Exception {
        int[] sizes = arguments.length == 0
                ? new int[] {10_000, 100_000}
                : Arrays.stream(arguments).mapToInt(Integer::parseInt).toArray();
        Path folder = Files.createTempDirectory("speed");
        for (int flights : sizes) {
            Path file = folder.resolve(flights + ".rafterbook");
            print(flights, "make it", 1, () -> PerformanceLogbook.make(file, flights, LocalDate.of(2026, 3, 31)));
            System.out.printf(Locale.ROOT, "%8d  %-34s %10.1f MB%n", flights, "file", Files.size(file) / 1e6);
            print(
                    flights,
                    "open and close",
                    9,
                    () -> Logbook.open(file, Mode.EXISTING).close());
            try (Logbook logbook = Logbook.open(file, Mode.EXISTING)) {
                questions(flights, logbook);
            }
        }
    }

    private static void questions(int flights, Logbook logbook) {
        Session last = logbook.read(r -> r.get(Session.class, lastSession(r)));
        Model model = logbook.read(r -> r.flights().ofSession(last.id()).stream()
                .map(FlightLine::model)
                .filter(found -> found != null)
                .findFirst()
                .orElseThrow());
        print(
                flights,
                "last session and its flights",
                9,
                () -> logbook.read(r -> r.flights().ofSession(lastSession(r)).size()));
        print(
                flights,
                "flights in the air",
                9,
                () -> logbook.read(r -> r.flights().inTheAir().size()));
        int ofModel = logbook.read(r -> r.flights().ofModel(model.id()).size());
        print(
                flights,
                "one model's " + ofModel + " flights",
                9,
                () -> logbook.read(r -> r.flights().ofModel(model.id()).size()));
        print(
                flights,
                "counts by version",
                9,
                () -> logbook.read(r -> r.flights().countsByVersion(model.id()).size()));
        print(
                flights,
                "notes, 50 found",
                9,
                () -> logbook.read(
                        r -> r.flights().notesContaining("lamp", null, 50).size()));
        print(
                flights,
                "notes, none found",
                9,
                () -> logbook.read(
                        r -> r.flights().notesContaining("zeppelin", null, 50).size()));
        print(
                flights,
                "all flights",
                9,
                () -> logbook.read(r -> r.flights().all().size()));
        print(flights, "what undo would take back", 9, logbook::undoable);
        int[] ordinal = {1000};
        print(
                flights,
                "enter one flight",
                9,
                () -> logbook.enter("Launch", w -> w.insert(Samples.flight(last, ordinal[0]++, null))));
        print(flights, "undo one flight", 9, logbook::undo);
        print(flights, "check", 1, logbook::check);
        print(flights, "backup", 1, () -> logbook.backup(logbook.file().resolveSibling(flights + " copy.rafterbook")));
    }

    private static String lastSession(Reader r) {
        Session last = r.flights().lastSession();
        if (last == null) {
            throw new IllegalStateException("no session");
        }
        return last.id();
    }

    private static void print(int flights, String what, int rounds, Runnable work) {
        double[] millis = new double[rounds];
        for (int i = rounds == 1 ? 0 : -1; i < rounds; i++) {
            long start = System.nanoTime();
            work.run();
            millis[Math.max(i, 0)] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(millis);
        System.out.printf(Locale.ROOT, "%8d  %-34s %10.2f ms%n", flights, what, millis[rounds / 2]);
    }
}
