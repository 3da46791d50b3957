package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.SessionLimit;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Mode;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindReading;
import org.rafterbook.units.UserError;

class ExportsTest {

    @TempDir
    Path folder;

    private Book book;
    private Book again;

    @BeforeEach
    void open() {
        Clock clock = Clock.fixed(Instant.parse("2026-01-25T12:00:00Z"), ZoneId.of("Europe/Paris"));
        book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, clock);
        again = Book.open(folder.resolve("b.rafterbook"), Mode.CREATE, clock);
    }

    @AfterEach
    void close() {
        book.close();
        again.close();
    }

    private static List<ImportFile> filesOf(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(
                            f -> f.toString().endsWith(".csv") || f.toString().endsWith(".json"))
                    .sorted()
                    .map(ImportFile::of)
                    .toList();
        }
    }

    private static ImportSummary take(Book into, List<ImportFile> files) {
        return into.imports().carryOut(into.imports().plan(files, ImportChoices.none()));
    }

    private static ImportSummary take(Book into, String... namesAndTexts) {
        List<ImportFile> files = new ArrayList<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            files.add(new ImportFile(namesAndTexts[i], namesAndTexts[i + 1]));
        }
        return take(into, files);
    }

    @Test
    void theDemoSeasonSurvivesExportAndImport() throws IOException {
        ImportSummary summary = take(book, filesOf(Path.of("sample-data")));
        assertThat(summary.flights()).isEqualTo(224);
        assertThat(summary.remarks()).isEmpty();
        assertThat(summary.added())
                .containsEntry("models", 3)
                .containsEntry("sessions", 14)
                .containsEntry("motors", 31)
                .containsEntry("batches", 2);
        Path out = folder.resolve("out");
        book.exports().write(out, false);
        take(again, filesOf(out));
        assertThat(told(again)).isEqualTo(told(book));
        assertThat(again.logbook().check()).isEmpty();
        assertThat(take(book, filesOf(Path.of("sample-data"))).addsNothing()).isTrue();
        assertThat(take(book, filesOf(out)).addsNothing()).isTrue();
    }

    /** All that an export keeps of a logbook, without ids, as text. */
    private static Map<String, String> told(Book book) {
        Map<String, String> told = new TreeMap<>();
        book.logbook().read(r -> {
            int n = 0;
            Map<String, Integer> riggings = new TreeMap<>();
            for (FlightLine line : r.flights().all()) {
                Flight f = line.flight();
                Wind w = line.wind();
                Version v = line.version();
                int rigging = line.rigging() == null ? 0 : line.rigging().ordinal();
                told.put(
                        "flight " + String.format("%05d", ++n),
                        List.of(
                                        line.session().localDate(),
                                        line.session().zone(),
                                        f.ordinal(),
                                        String.valueOf(
                                                line.model() == null
                                                        ? null
                                                        : line.model().name()),
                                        rigging,
                                        String.valueOf(
                                                line.rigging() == null
                                                        ? null
                                                        : line.rigging().reason()),
                                        v == null ? 0 : v.number(),
                                        v == null ? 0 : v.build(),
                                        v == null ? "" : String.valueOf(v.geometry()),
                                        v == null ? "" : values(r.where(SettingValue.class, "versionId", v.id()), book),
                                        String.valueOf(line.venue()).replaceAll("id=[^,]*", ""),
                                        String.valueOf(line.motor()).replaceAll("[iI]d=[^,]*", ""),
                                        w == null
                                                ? ""
                                                : w.ordinal() + " "
                                                        + w.toString().replaceAll("[iI]d=[^,]*", ""),
                                        f.toString().replaceAll("[iI]d=[^,]*", ""),
                                        r.where(FlightEvent.class, "flightId", f.id())
                                                .toString()
                                                .replaceAll("[iI]d=[^,]*", ""))
                                .toString());
            }
            told.put("riggings", riggings.toString());
            put(told, r.all(Model.class));
            put(told, r.all(SettingDef.class));
            put(told, r.all(Session.class));
            put(told, r.all(SessionLimit.class));
            put(told, r.all(AirReading.class));
            put(told, r.all(Motor.class));
            put(told, r.all(WindReading.class));
            put(told, r.all(Weighing.class));
            told.put("versions", String.valueOf(r.all(Version.class).size()));
            told.put("winds", String.valueOf(r.all(Wind.class).size()));
            return n;
        });
        for (Model model : book.riggings().models()) {
            told.put(
                    "strip of " + model.name(),
                    book.riggings().strip(model.id()).stream()
                            .map(Rigged::name)
                            .toList()
                            .toString());
        }
        return told;
    }

    private static String values(List<SettingValue> values, Book book) {
        Map<String, String> said = new TreeMap<>();
        for (SettingValue value : values) {
            SettingDef def = book.logbook().read(r -> r.get(SettingDef.class, value.settingId()));
            said.put(def.label(), String.valueOf(new Setting(value.number(), value.word(), null)));
        }
        return said.toString();
    }

    private static void put(Map<String, String> told, List<? extends Record> rows) {
        List<String> texts = rows.stream()
                .map(row -> row.toString().replaceAll("([iI]d|cutFrom)=[^,\\]]*", ""))
                .sorted()
                .toList();
        told.put(rows.isEmpty() ? "none" : rows.get(0).getClass().getSimpleName(), texts.toString());
    }

    @Test
    void whatOnlyAnExportHoldsSurvivesToo() throws IOException {
        String sheet = AirSheets.TEASEL;
        take(
                book,
                "teasel.json",
                sheet,
                "flights.csv",
                """
                model,session_date,duration_s,setting.wing.edge_aft_mm,setting.pitch,setting.flap,build,ending,cut_short,\
                peak_low_m,peak_high_m,duration_source,clock_doubt_s,landed_at,left_out_why,left_out_by,left_out_at,\
                left_out_before_time,change_reason,ceiling_m,venue,motor,turns_wound,wound_at,winder_ratio,wind_notes,launched_at
                Teasel,2026-01-13,600.123,20,,up,1,touched,yes,7.9,,watch,0.3,2026-01-13T19:10:00.123,gust,R. Aldous,\
                2026-01-13T19:11:00,no,as last year,6.5,Hall,M1,1500,2026-01-13T18:55:00,15,dry,2026-01-13T19:00:00
                Teasel,2026-01-13,601,25,480,,2,,,,,,,,,,,,wing too far forward,6.5,Hall,M1,1510,,,,2026-01-13T19:20:00
                Teasel,2026-01-14,602,20,(not recorded),,2,,,,,,,,,,,,,9.4,Hall,,,,,,
                Teasel,2026-01-14,,,,,,aborted,,,,,,,,,,,,9.4,Hall,,,,,,
                """,
                "flights_without_model.csv",
                "session_date,duration_s,venue,launched_at\n2026-01-13,300,Hall,2026-01-13T19:30:00\n",
                "venues.csv",
                "venue,usable_height_m,site_height_m\nHall,9.4,120\n",
                "winds.csv",
                "motor,wind_no,session_date,venue,turns_wound,end,notes\nM1,2,2026-01-13,Hall,1600,broke,in the tube\n",
                "sessions.csv",
                "session_date,venue,zone,goal\n2026-01-13,Hall,America/New_York,pitch\n");
        Path out = folder.resolve("out");
        ExportSummary summary = book.exports().write(out, false);
        assertThat(summary.flights()).isEqualTo(5);
        assertThat(summary.files()).contains("flights.csv", "flights_without_model.csv", "teasel-t1.json");
        take(again, filesOf(out));
        assertThat(told(again)).isEqualTo(told(book));
        assertThat(told(book).get("strip of Teasel")).isEqualTo("[t1, t2, t3]");
    }

    @Test
    void anEmptyLogbookExportsEmptyTables() throws IOException {
        Path out = folder.resolve("out");
        book.exports().write(out, false);
        assertThat(take(again, filesOf(out)).addsNothing()).isTrue();
        assertThat(Files.readString(out.resolve("flights.csv"))).startsWith("model,session_date,venue,ceiling_m,");
    }

    @Test
    void nothingIsOverwrittenUnasked() throws IOException {
        Path out = folder.resolve("out");
        Files.createDirectories(out);
        Files.writeString(out.resolve("motors.csv"), "mine");
        assertThatThrownBy(() -> book.exports().write(out, false))
                .isInstanceOf(UserError.class)
                .hasMessageStartingWith(
                        "There is a file " + out.resolve("motors.csv") + " already; nothing was written.");
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files).hasSize(1);
        }
        book.exports().write(out, true);
        assertThat(out.resolve("motors.csv")).content().startsWith("motor,batch,");
    }

    @Test
    void aFlightInTheAirIsLeftOutAndSaid() {
        take(book, "flights.csv", "model,session_date,duration_s\nTeasel,2026-01-13,600\n");
        book.logbook().enter("launch", w -> {
            Flight f = w.all(Flight.class).get(0);
            return w.insert(new Flight(
                    Logbook.newId(),
                    f.sessionId(),
                    f.riggingId(),
                    null,
                    2,
                    1,
                    Instant.parse("2026-01-13T19:00:00Z"),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    1,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    Map.of()));
        });
        ExportSummary summary = book.exports().write(folder.resolve("out"), false);
        assertThat(summary.flights()).isEqualTo(1);
        assertThat(summary.remarks()).containsExactly("One flight is still in the air and not among them.");
    }
}
