package org.rafterbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImportCommandTest {

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) {
        out.reset();
        err.reset();
        return CommandLineStart.run(args, new PrintStream(out, true), new PrintStream(err, true));
    }

    private JsonNode json() throws IOException {
        return new ObjectMapper().readTree(out.toString(StandardCharsets.UTF_8));
    }

    private String error() {
        return err.toString(StandardCharsets.UTF_8).strip();
    }

    private String logbook() {
        return folder.resolve("a.rafterbook").toString();
    }

    /** Forty flights of a flyer's own table, with three settings the program does not know. */
    private Path table(String badCell) throws IOException {
        StringBuilder text = new StringBuilder("Datum;Modell;Zeit;Kurbel;Anstellwinkel;Steigung;Klappe\n");
        for (int i = 0; i < 40; i++) {
            text.append(10 + i / 8)
                    .append(".1.2026;Moorhuhn;")
                    .append(8 + i % 3)
                    .append(",")
                    .append(i % 10);
            text.append(";")
                    .append(i == 17 ? badCell : "120")
                    .append(";2,")
                    .append(i / 10 % 2 * 5)
                    .append(";");
            text.append(480 + i / 20 * 10)
                    .append(";")
                    .append(i < 5 ? "auf" : "zu")
                    .append("\n");
        }
        return Files.writeString(folder.resolve("club.csv"), text);
    }

    private int take(Path table, String... more) {
        String[] args = {
            "import",
            "--logbook",
            logbook(),
            table.toString(),
            "--column",
            "Datum=session_date",
            "--column",
            "Modell=model",
            "--column",
            "Zeit=duration_s:min",
            "--column",
            "Kurbel=turns_wound:winder turns",
            "--column",
            "Anstellwinkel=setting.incidence:deg",
            "--column",
            "Steigung=setting.pitch:mm",
            "--column",
            "Klappe=setting.flap",
            "--winder",
            "15",
            "--dates",
            "d.M.yyyy",
            "--json"
        };
        String[] all = Arrays.copyOf(args, args.length + more.length);
        System.arraycopy(more, 0, all, args.length, more.length);
        return run(all);
    }

    @Test
    void oneBadLineOfFortyRefusesTheWholeAndMakesNoLogbook() throws IOException {
        assertThat(take(table("viele"))).isEqualTo(2);
        assertThat(error()).isEqualTo("club.csv, line 19, column 'Kurbel': “viele” does not begin with a number.");
        assertThat(Path.of(logbook())).doesNotExist();
        assertThat(out.size()).isZero();
    }

    @Test
    void correctedItGoesInAndAgainNothingIsAdded() throws IOException {
        assertThat(take(table("121"), "--keep-mapping", "club")).as(error()).isZero();
        assertThat(json().get("flights_added").asInt()).isEqualTo(40);
        assertThat(json().get("added").get("versions").asInt()).isEqualTo(5);
        assertThat(run(
                        "import",
                        "--logbook",
                        logbook(),
                        folder.resolve("club.csv").toString(),
                        "--json"))
                .as(error())
                .isZero();
        assertThat(json().get("flights_added").asInt()).isZero();
        assertThat(json().get("flights_already_there").asInt()).isEqualTo(40);
        assertThat(run(
                        "import",
                        "--logbook",
                        logbook(),
                        folder.resolve("club.csv").toString(),
                        "--mapping",
                        "club"))
                .isZero();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .isEqualToIgnoringNewLines("Nothing was added: all 40 flights are there already.");
        assertThat(run("check", "--logbook", logbook())).isZero();
    }

    @Test
    void aPreviewKeepsNothing() throws IOException {
        assertThat(take(table("121"), "--preview")).as(error()).isZero();
        assertThat(json().get("kept").asBoolean()).isFalse();
        assertThat(json().get("flights_added").asInt()).isEqualTo(40);
        assertThat(Path.of(logbook())).doesNotExist();
    }

    @Test
    void whatOnlyShowsWhileWritingMakesNoLogbookEither() throws IOException {
        Path events = Files.writeString(
                folder.resolve("flight_events.csv"), "session_date,kind,flight_no\n2026-01-10,touched,1\n");
        assertThat(run("import", "--logbook", logbook(), events.toString())).isEqualTo(2);
        assertThat(error()).startsWith("flight_events.csv, line 2: there is no such flight");
        assertThat(Path.of(logbook())).doesNotExist();
    }

    @Test
    void whatHoldsForEveryRowIsSaidOnce() throws IOException {
        Path table = Files.writeString(folder.resolve("t.csv"), "session_date,duration_s\n2026-01-10,600\n");
        assertThat(run("import", "--logbook", logbook(), table.toString(), "--all", "model=Teasel"))
                .as(error())
                .isZero();
        assertThat(run("import", "--logbook", logbook(), table.toString(), "--all", "modell=Teasel"))
                .isEqualTo(2);
        assertThat(error()).isEqualTo("'modell' is no field of a flight such as model or venue.");
    }

    @Test
    void theDemoSeasonIsExportedAndTakenInAgain() throws IOException {
        Path to = folder.resolve("files");
        assertThat(run("export", "--demo", "--to", to.toString(), "--json"))
                .as(error())
                .isZero();
        assertThat(json().get("flights").asInt()).isEqualTo(224);
        assertThat(run("export", "--demo", "--to", to.toString())).isEqualTo(2);
        assertThat(error()).contains("already; nothing was written");
        assertThat(run(
                        "import",
                        "--logbook",
                        logbook(),
                        to.resolve("flights.csv").toString(),
                        "--json"))
                .as(error())
                .isZero();
        assertThat(json().get("flights_added").asInt()).isEqualTo(224);
    }
}
