package org.rafterbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.rafterbook.logbook.Mode;
import org.rafterbook.work.Book;
import org.rafterbook.work.ImportChoices;
import org.rafterbook.work.ImportFile;
import org.rafterbook.work.ImportPlan;
import org.rafterbook.work.ImportSummary;

/** How long tables of 1,000 and 10,000 flights take to read, to keep, to keep again and to export; prints seconds. */
public final class ImportBench {

    private ImportBench() {}

    public static void main(String[] args) throws IOException {
        double small = run(1_000);
        double large = run(10_000);
        System.out.printf(Locale.ROOT, "10,000 rows take %.1f times as long as 1,000%n", large / small);
    }

    private static double run(int rows) throws IOException {
        Path folder = Files.createTempDirectory("import-bench");
        ImportFile file = new ImportFile("flights.csv", table(rows, new Random(7)));
        ImportFile sheet = ImportFile.of(Path.of("sample-data", "teasel.json"));
        try (Book book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, Clock.systemUTC())) {
            long begin = System.nanoTime();
            ImportPlan plan = book.imports().plan(List.of(file, sheet), ImportChoices.none());
            double read = since(begin);
            begin = System.nanoTime();
            ImportSummary summary = book.imports().carryOut(plan);
            double kept = since(begin);
            begin = System.nanoTime();
            book.imports().carryOut(plan);
            double again = since(begin);
            begin = System.nanoTime();
            book.exports().write(folder.resolve("out"), false);
            double written = since(begin);
            System.out.printf(
                    Locale.ROOT,
                    "%d rows: read %.2f s, kept %.2f s, again %.2f s, export %.2f s; %s%n",
                    rows,
                    read,
                    kept,
                    again,
                    written,
                    summary.lines().get(0));
            return read + kept;
        }
    }

    private static double since(long begin) {
        return (System.nanoTime() - begin) / 1e9;
    }

    private static String table(int rows, Random random) {
        StringBuilder text = new StringBuilder("model,session_date,venue,launched_at,duration_s,ending,turns_wound,"
                + "turns_backed_off,turns_left,launch_torque_nmm,temperature_c,motor,notes,setting.wing.edge_aft_mm,"
                + "setting.wing.incidence_deg,setting.Pitch\n");
        LocalDate day = LocalDate.of(2000, 1, 1);
        for (int i = 0; i < rows; i++) {
            int of = i % 16;
            text.append("Teasel,").append(day.plusDays(7L * (i / 16))).append(",Hall,");
            text.append(day.plusDays(7L * (i / 16)).atTime(18, 30).plusMinutes(12L * of))
                    .append(",");
            text.append(String.format(
                    Locale.ROOT, "%.1f,clean,%d,%d,%d,", 500 + 60 * random.nextGaussian(), 1800, 60, 500));
            text.append(
                    String.format(Locale.ROOT, "%.2f,%.1f,M%d,", 2.5 + random.nextDouble(), 18.0 + of / 10.0, i % 40));
            text.append("steady,").append(95 + random.nextInt(12)).append(",").append(2 + random.nextInt(4) / 4.0);
            text.append(",").append(480 + 10 * random.nextInt(3)).append("\n");
        }
        return text.toString();
    }
}
