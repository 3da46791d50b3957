package org.rafterbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.logbook.Mode;
import org.rafterbook.work.Book;

class CommandLineTest {

    private static final String SHEET = """
            {"rafterbook": "airframe sheet", "edition": 1, "model": "Teasel", "version": "a", "balance_mm": 70.0,
             "surfaces": [
              {"name": "wing", "role": "wing", "edge_aft_mm": 0, "span_mm": 420, "chord_mm": 110},
              {"name": "tail", "role": "tailplane", "edge_aft_mm": 327.5, "rise_mm": 25, "span_mm": 270, "chord_mm": 80}]}
            """;

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) {
        out.reset();
        err.reset();
        return CommandLineStart.run(args, new PrintStream(out, true), new PrintStream(err, true));
    }

    private JsonNode json() throws Exception {
        return new ObjectMapper().readTree(out.toString(StandardCharsets.UTF_8));
    }

    private String error() {
        return err.toString(StandardCharsets.UTF_8).strip();
    }

    @Test
    void marginOfASheetHasTheClosedFormBesideIt() throws Exception {
        Path sheet = Files.writeString(folder.resolve("teasel.json"), SHEET);
        assertThat(run("margin", sheet.toString(), "--json")).isZero();
        JsonNode answer = json().get(0);
        // row CF-14 of the check values: 85.97 mm, computed independently for this project
        assertThat(answer.get("closed_form").get("neutral_point_mm").asDouble()).isCloseTo(85.97, Offset.offset(0.05));
        assertThat(answer.get("balance_mm").asDouble()).isEqualTo(70.0);
        assertThat(answer.get("area_mm2").asDouble()).isCloseTo(46200, Offset.offset(1e-6));
        assertThat(answer.get("margin_percent").asDouble())
                .isCloseTo((answer.get("neutral_point_mm").asDouble() - 70) / 1.1, Offset.offset(1e-9));
    }

    @Test
    void everyCommandExplainsItself() {
        for (String command : new String[] {"margin", "import", "review"}) {
            out.reset();
            assertThat(run(command, "--help")).isZero();
            assertThat(out.toString(StandardCharsets.UTF_8)).startsWith("Usage: rafterbook " + command);
        }
    }

    @Test
    void oneBadSheetAnswersNone() throws Exception {
        Path good = Files.writeString(folder.resolve("good.json"), SHEET);
        Path bad = Files.writeString(folder.resolve("bad.json"), SHEET.replace("\"rise_mm\"", "\"rice_mm\""));
        assertThat(run("margin", good.toString(), bad.toString(), "--json")).isEqualTo(2);
        assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(error()).contains("rice_mm").doesNotContain("\n");
    }

    @Test
    void airAnswersDensity() throws Exception {
        // row A6 of the check values: 1.199314, computed independently for this project
        assertThat(run("air", "--temperature", "20C", "--pressure", "1013.25hPa", "--humidity", "50%", "--json"))
                .isZero();
        assertThat(json().get("density_kg_m3").asDouble()).isCloseTo(1.199314, Offset.offset(1e-6));
    }

    @Test
    void aWrongUnitIsBadInputInOneSentence() {
        assertThat(run("air", "--temperature", "20mm", "--pressure", "1013hPa")).isEqualTo(2);
        assertThat(error()).contains("temperature").doesNotContain("\n");
    }

    @Test
    void anUnknownCommandOrOptionIsBadInput() {
        assertThat(run("fly")).isEqualTo(2);
        assertThat(run("air", "--colour", "red")).isEqualTo(2);
        assertThat(error()).isNotEmpty().doesNotContain("\n");
    }

    @Test
    void checkAndBackupWorkBesideAnOpenWindow() throws Exception {
        Path file = folder.resolve("a.rafterbook");
        Path copy = folder.resolve("copy.rafterbook");
        try (Book book = Book.open(file, Mode.CREATE, OneEvening.CLOCK)) {
            book.riggings().addModel("Teasel");
            assertThat(run("check", "--logbook", file.toString(), "--json")).isZero();
            assertThat(json().get("sound").asBoolean()).isTrue();
            assertThat(run("backup", "--logbook", file.toString(), "--to", copy.toString()))
                    .isZero();
            assertThat(run("backup", "--logbook", file.toString(), "--to", copy.toString()))
                    .isNotZero();
        }
        try (Book book = Book.open(copy, Mode.READ_ONLY, OneEvening.CLOCK)) {
            assertThat(book.riggings().models()).hasSize(1);
        }
    }

    @Test
    void reviewOfAnEmptyLogbookSaysSo() throws Exception {
        Path file = folder.resolve("a.rafterbook");
        Book.open(file, Mode.CREATE, OneEvening.CLOCK).close();
        assertThat(run("review", "--logbook", file.toString(), "--json")).isZero();
        assertThat(json().get("changes")).isEmpty();
    }

    @Test
    void aMissingLogbookIsNotMade() {
        Path file = folder.resolve("none.rafterbook");
        assertThat(run("check", "--logbook", file.toString())).isNotZero();
        assertThat(file).doesNotExist();
    }

    @Test
    void aMarginOfTheSeasonStandsWithWhatItIsUncertainBy() throws Exception {
        assertThat(run("season", "--demo", "--json")).isZero();
        JsonNode season = json();
        JsonNode version = season.get("models").get(0).get("versions").get(0);
        assertThat(version.get("margin_percent").isNumber()).isTrue();
        assertThat(version.get("band_percent").asDouble()).isBetween(3.0, 15.0);
        assertThat(season.get("bests").get(0).get("band_percent").asDouble()).isBetween(3.0, 15.0);
        assertThat(run("season", "--demo")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).containsPattern("\\d\\.\\d ± \\d");
    }

    @Test
    void seasonSaysWhatTheScreenShowsAndFlightsMarkLowerBounds() throws Exception {
        Path table = Files.writeString(
                folder.resolve("f.csv"),
                "model,session_date,duration_s,ending,cut_short\n"
                        + "Teasel,2025-10-28,521,clean,no\n"
                        + "Teasel,2025-10-28,634,touched,yes\n"
                        + "Marram,2024-11-05,480,clean,no\n");
        String logbook = folder.resolve("a.rafterbook").toString();
        assertThat(run("import", "--logbook", logbook, table.toString())).isZero();
        assertThat(run("flights", "--logbook", logbook)).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("≥ 10:34", " 8:41");
        assertThat(run("season", "--logbook", logbook, "--json")).isZero();
        JsonNode season = json();
        assertThat(season.get("season").asInt()).isEqualTo(2025);
        assertThat(season.get("seasons")).hasSize(2);
        assertThat(season.get("flights_at_least").asInt()).isEqualTo(1);
        assertThat(season.get("models")
                        .get(0)
                        .get("versions")
                        .get(0)
                        .get("version")
                        .asText())
                .isEqualTo("t1");
        assertThat(season.get("bests")).hasSize(1);
        assertThat(season.get("bests").get(0).get("duration_s").asDouble()).isEqualTo(521.0);
        assertThat(season.get("sessions").get(0).get("best_s").asDouble()).isEqualTo(521.0);
        assertThat(run("season", "--logbook", logbook, "--season", "2024")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("1 flight, 0 of them", "Marram");
        assertThat(run("season", "--logbook", logbook, "--season", "1999")).isEqualTo(2);
        assertThat(error()).isEqualTo("No season in this logbook begins in 1999.");
    }
}
