package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.exchange.ColumnRule;
import org.rafterbook.exchange.ImportProblem;
import org.rafterbook.exchange.Mapping;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Mode;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindEnd;
import org.rafterbook.units.UserError;

class ImportsTest {

    private static final String HEAD = "model,session_date,duration_s";

    @TempDir
    Path folder;

    private Book book;

    @BeforeEach
    void open() {
        Clock clock = Clock.fixed(Instant.parse("2026-01-25T12:00:00Z"), ZoneId.of("Europe/London"));
        book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, clock);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private ImportSummary flights(String text) {
        return files("flights.csv", text);
    }

    private ImportSummary files(String... namesAndTexts) {
        return book.imports().carryOut(plan(ImportChoices.none(), namesAndTexts));
    }

    private ImportPlan plan(ImportChoices choices, String... namesAndTexts) {
        List<ImportFile> files = new ArrayList<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            files.add(new ImportFile(namesAndTexts[i], namesAndTexts[i + 1]));
        }
        return book.imports().plan(files, choices);
    }

    private List<FlightLine> lines() {
        return book.logbook().read(r -> r.flights().all());
    }

    private <R extends Record> List<R> all(Class<R> type) {
        return book.logbook().read(r -> r.all(type));
    }

    private Model model(String name) {
        return book.riggings().models().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Each rigging of the model as version, flights: "t1x3 t2x2 t1x1". */
    private String strip(String name) {
        Map<String, Integer> flown =
                book.logbook().read(r -> r.flights().countsByRigging(model(name).id()));
        return book.riggings().strip(model(name).id()).stream()
                .map(r -> r.name() + "x" + flown.getOrDefault(r.rigging().id(), 0))
                .collect(Collectors.joining(" "));
    }

    private Map<String, Setting> values(String name, int rigging) {
        Rigged rigged = book.riggings().strip(model(name).id()).get(rigging);
        return rigged.settings().stream()
                .filter(d -> rigged.values().containsKey(d.id()))
                .collect(
                        Collectors.toMap(SettingDef::label, d -> rigged.values().get(d.id())));
    }

    @Test
    void threeColumnsMakeFlightsOfAModelWithOneVersion() {
        ImportSummary summary = flights(HEAD + "\nTeasel,2026-01-13,600\nTeasel,2026-01-20,610.5\n");
        assertThat(summary.flights()).isEqualTo(2);
        assertThat(summary.added()).containsEntry("models", 1).containsEntry("versions", 1);
        assertThat(strip("Teasel")).isEqualTo("t1x2");
        assertThat(lines()).extracting(l -> l.flight().durationS()).containsExactly(600.0, 610.5);
        assertThat(lines().get(0).flight().durationSource()).isEqualTo(DurationSource.TYPED);
        assertThat(lines().get(0).session().zone()).isEqualTo(ZoneId.of("Europe/London"));
    }

    @Test
    void theSameFileTwiceAddsNothing() {
        String text = HEAD + ",launched_at,venue,setting.pitch,turns_wound,motor,temperature_c\n"
                + "Teasel,2026-01-13,600,2026-01-13T19:00:00,Hall,480,1500,M1,18\n"
                + "Teasel,2026-01-13,600,,Hall,490,1500,M1,18\n"
                + "Teasel,2026-01-13,600,,Hall,490,1500,M2,18\n";
        assertThat(flights(text).flights()).isEqualTo(3);
        long changes = entries();
        ImportSummary again = flights(text);
        assertThat(again.addsNothing()).isTrue();
        assertThat(again.alreadyThere()).isEqualTo(3);
        assertThat(again.lines()).containsExactly("Nothing was added: all 3 flights are there already.");
        assertThat(entries()).isEqualTo(changes);
        assertThat(lines()).hasSize(3);
    }

    private long entries() {
        return book.logbook()
                .read(r -> (long) r.all(Flight.class).size()
                        + r.all(Wind.class).size()
                        + r.all(AirReading.class).size()
                        + r.all(Version.class).size()
                        + r.all(Session.class).size());
    }

    @Test
    void equalRowsWithoutALaunchAreToldApartByTheirRank() {
        flights(HEAD + "\nTeasel,2026-01-13,600\nTeasel,2026-01-13,600\n");
        ImportSummary more = flights(HEAD + "\nTeasel,2026-01-13,600\nTeasel,2026-01-13,600\nTeasel,2026-01-13,600\n");
        assertThat(more.flights()).isEqualTo(1);
        assertThat(more.alreadyThere()).isEqualTo(2);
        assertThat(lines()).hasSize(3);
    }

    @Test
    void newCombinationsAreVersionsAndAReturnIsARigging() {
        flights(HEAD + ",setting.pitch,setting.flap\n"
                + "Teasel,2026-01-13,600,480,up\n"
                + "Teasel,2026-01-13,610,490,\n"
                + "Teasel,2026-01-13,605,480,\n"
                + "Teasel,2026-01-20,606,,\n"
                + "Teasel,2026-01-20,607,,down\n");
        assertThat(strip("Teasel")).isEqualTo("t1x1 t2x1 t1x2 t3x1");
        assertThat(values("Teasel", 3))
                .containsEntry("pitch", Setting.of(480))
                .containsEntry("flap", Setting.of("down"));
    }

    @Test
    void anEmptyCellIsUnchangedAlsoSinceTheLogbooksLastFlight() {
        flights(HEAD + ",setting.pitch,build\nTeasel,2026-01-13,600,480,2\n");
        flights(HEAD + ",setting.pitch,setting.flap\nTeasel,2026-01-20,600,,up\nTeasel,2026-01-20,601,,\n");
        assertThat(strip("Teasel")).isEqualTo("t1x1 t2x2");
        assertThat(values("Teasel", 1)).containsEntry("pitch", Setting.of(480)).containsEntry("flap", Setting.of("up"));
        assertThat(lines().get(2).version().build()).isEqualTo(2);
        assertThat(model("Teasel").build()).isEqualTo(2);
    }

    @Test
    void aColumnWithAnyWordIsAWord() {
        flights(HEAD + ",setting.propeller,setting.pitch\nTeasel,2026-01-13,600,2,2\nTeasel,2026-01-13,610,flared,3\n");
        assertThat(values("Teasel", 0))
                .containsEntry("propeller", Setting.of("2"))
                .containsEntry("pitch", Setting.of(2));
    }

    @Test
    void aSettingThatIsANumberHereRefusesAWordWithItsPlace() {
        flights(HEAD + ",setting.pitch\nTeasel,2026-01-13,600,480\n");
        ImportPlan plan = plan(
                ImportChoices.none(),
                "more.csv",
                HEAD + ",setting.pitch\nTeasel,2026-01-20,600,490\nTeasel,2026-01-20,601,fine\n");
        assertThat(book.imports().preview(plan).problems())
                .extracting(ImportProblem::toString)
                .containsExactly("more.csv, line 3, column 'setting.pitch': “fine” does not begin with a number.");
        assertThatThrownBy(() -> book.imports().carryOut(plan)).isInstanceOf(UserError.class);
        assertThat(lines()).hasSize(1);
    }

    @Test
    void aFreeSettingKeepsItsUnit() {
        ImportChoices choices = new ImportChoices(
                null,
                List.of(ColumnRule.parse("Inc=setting.incidence:deg"), ColumnRule.parse("Pitch=setting.pitch:in")),
                Map.of("model", "Quire"),
                null,
                null,
                null);
        book.imports().carryOut(plan(choices, "q.csv", "session_date,duration_s,Inc,Pitch\n2026-01-13,500,2.5,19\n"));
        SettingDef incidence = book.riggings().strip(model("Quire").id()).get(0).settings().stream()
                .filter(d -> d.label().equals("incidence"))
                .findFirst()
                .orElseThrow();
        assertThat(incidence.quantity()).isEqualTo("ANGLE");
        assertThat(values("Quire", 0).get("incidence").number()).isCloseTo(Math.toRadians(2.5), within(1e-15));
        assertThat(values("Quire", 0).get("pitch").number()).isEqualTo(0.4826);
    }

    private static final String SHEET = AirSheets.TEASEL;

    @Test
    void aSheetAndItsFlightsGiveVersionsWithGeometry() {
        String csv = HEAD + ",setting.wing.edge_aft_mm,setting.wing.incidence_deg\n"
                + "Teasel,2026-01-13,600,20,\nTeasel,2026-01-13,610,25,\nTeasel,2026-01-13,605,,2.5\n"
                + "Teasel,2026-01-13,604,20,2\n";
        files("flights.csv", csv, "teasel.json", SHEET);
        assertThat(strip("Teasel")).isEqualTo("t1x1 t2x1 t3x1 t1x1");
        Airframe third = book.riggings().strip(model("Teasel").id()).get(2).geometry();
        assertThat(third.surfaces().get(0).edgeAftM()).isEqualTo(0.025);
        assertThat(Math.toDegrees(third.surfaces().get(0).incidenceRad())).isCloseTo(2.5, within(1e-12));
        assertThat(third.masses().get(0).aftM()).isCloseTo(0.065, within(1e-12));
        List<Weighing> weighings = all(Weighing.class);
        assertThat(weighings).hasSize(1);
        assertThat(weighings.get(0).versionId())
                .isEqualTo(book.riggings()
                        .strip(model("Teasel").id())
                        .get(0)
                        .version()
                        .id());
        assertThat(files("flights.csv", csv, "teasel.json", SHEET).addsNothing())
                .isTrue();
        assertThat(all(Weighing.class)).hasSize(1);
        assertThat(book.logbook().check()).isEmpty();
    }

    @Test
    void aSheetAfterTheFlightsGoesUnderTheirVersions() {
        String csv = HEAD
                + ",setting.wing.edge_aft_mm,setting.pitch\nTeasel,2026-01-13,600,20,480\nTeasel,2026-01-13,610,25,480\n";
        flights(csv);
        assertThat(book.riggings().now(model("Teasel").id()).geometry()).isNull();
        files("teasel.json", SHEET);
        assertThat(strip("Teasel")).isEqualTo("t1x1 t2x1");
        assertThat(book.riggings()
                        .now(model("Teasel").id())
                        .geometry()
                        .surfaces()
                        .get(0)
                        .edgeAftM())
                .isEqualTo(0.025);
        assertThat(flights(csv).addsNothing()).isTrue();
        assertThat(files("teasel.json", SHEET).addsNothing()).isTrue();
        flights(HEAD + ",setting.wing.edge_aft_mm\nTeasel,2026-01-20,600,20\n");
        assertThat(strip("Teasel")).isEqualTo("t1x1 t2x1 t1x1");
    }

    @Test
    void aSheetBeforeTheFlightsIsTheirGeometry() {
        files("teasel.json", SHEET);
        assertThat(strip("Teasel")).isEqualTo("t1x0");
        flights(HEAD
                + ",setting.wing.edge_aft_mm,setting.tail.tilt_deg\nTeasel,2026-01-13,600,,\nTeasel,2026-01-13,610,25,\n"
                + "Teasel,2026-01-13,611,,3\n");
        assertThat(strip("Teasel")).isEqualTo("t1x1 t2x1 t3x1");
        assertThat(book.riggings()
                        .now(model("Teasel").id())
                        .geometry()
                        .surfaces()
                        .get(1)
                        .tiltRad())
                .isCloseTo(Math.toRadians(3), within(1e-15));
    }

    @Test
    void flightsInBetweenAreMergedByDateAndSplitARigging() {
        flights(HEAD
                + ",setting.pitch\nTeasel,2026-01-06,600,480\nTeasel,2026-01-20,601,\nTeasel,2026-01-20,602,490\n");
        assertThat(strip("Teasel")).isEqualTo("t1x2 t2x1");
        flights(HEAD + ",setting.pitch\nTeasel,2026-01-13,700,490\nTeasel,2026-01-13,701,500\n");
        assertThat(strip("Teasel")).isEqualTo("t1x1 t2x1 t3x1 t1x1 t2x1");
        assertThat(lines()).extracting(l -> l.flight().durationS()).containsExactly(600.0, 700.0, 701.0, 601.0, 602.0);
        flights(HEAD + ",setting.pitch\nTeasel,2026-01-07,703,\nTeasel,2026-01-19,704,480\n");
        assertThat(strip("Teasel")).isEqualTo("t1x2 t2x1 t3x1 t1x2 t2x1");
    }

    @Test
    void anEarlierFlightThanAllDoesNotTakeTodaysSettings() {
        flights(HEAD + ",setting.pitch\nTeasel,2026-01-20,600,480\n");
        flights(HEAD + "\nTeasel,2026-01-06,590\n");
        assertThat(strip("Teasel")).isEqualTo("t2x1 t1x1");
        assertThat(values("Teasel", 0)).isEmpty();
    }

    @Test
    void launchesGiveTheOrderWithinTheSession() {
        flights(HEAD
                + ",launched_at\nTeasel,2026-01-20,600,2026-01-20T19:00\nTeasel,2026-01-20,601,2026-01-20T20:00\n");
        flights(HEAD + ",launched_at\nQuire,2026-01-20,602,2026-01-20T19:30\nQuire,2026-01-20,603,\n");
        assertThat(lines()).extracting(l -> l.flight().durationS()).containsExactly(600.0, 602.0, 603.0, 601.0);
        assertThat(lines()).extracting(l -> l.flight().ordinal()).containsExactly(1, 2, 3, 4);
    }

    @Test
    void aModelWithOnlyANameLosesItsUnflownRigging() {
        book.riggings().addModel("Teasel");
        flights(HEAD + ",setting.pitch\nTeasel,2026-01-13,600,480\n");
        assertThat(strip("Teasel")).isEqualTo("t2x1");
        assertThat(book.riggings().now(model("Teasel").id()).values()).hasSize(1);
    }

    @Test
    void windsAreCountedForEachMotorAndSharedByARelaunch() {
        flights(HEAD + ",motor,turns_wound,launch_no_of_wind,partial_fraction,ending\n"
                + "Teasel,2026-01-13,,M1,1500,1,1,aborted\nTeasel,2026-01-13,600,M1,1500,2,1,\n"
                + "Teasel,2026-01-13,601,M1,1510,1,1,\nTeasel,2026-01-20,300,M2,700,,0.5,\n"
                + "Teasel,2026-01-20,605,,1600,,,\nTeasel,2026-01-20,606,,,,,\n");
        List<FlightLine> lines = lines();
        assertThat(lines.get(0).wind()).isEqualTo(lines.get(1).wind());
        assertThat(lines.get(1).flight().launchNoOfWind()).isEqualTo(2);
        assertThat(lines.get(2).wind().ordinal()).isEqualTo(2);
        assertThat(lines.get(2).wind().end()).isEqualTo(WindEnd.FLOWN);
        assertThat(lines.get(3).motor().fraction()).isEqualTo(0.5);
        assertThat(lines.get(4).wind().motorId()).isNull();
        assertThat(lines.get(5).wind()).isNull();
        flights(HEAD + ",motor,turns_wound\nTeasel,2026-01-06,500,M1,1400\n");
        String motor = all(Motor.class).get(0).id();
        List<Wind> winds = book.logbook().read(r -> r.flights().windsOfMotor(motor));
        assertThat(winds).extracting(Wind::turnsWound).containsExactly(1400.0, 1500.0, 1510.0);
    }

    @Test
    void theAirIsWrittenDownWhereItChanges() {
        flights(HEAD + ",launched_at,temperature_c,humidity_percent,pressure_hpa\n"
                + "Teasel,2026-01-20,600,2026-01-20T19:00,18,45,1010\nTeasel,2026-01-20,601,2026-01-20T19:20,18,45,1010\n"
                + "Teasel,2026-01-20,602,2026-01-20T19:40,18.5,45,1010\n");
        List<AirReading> air = all(AirReading.class);
        assertThat(air).extracting(AirReading::temperatureK).containsExactly(291.15, 291.65);
        assertThat(air.get(1).at()).isEqualTo(Instant.parse("2026-01-20T19:40:00Z"));
    }

    @Test
    void oneBadLineRefusesAllFilesAndNothingIsKept() {
        ImportPlan plan = plan(
                ImportChoices.none(),
                "motors.csv",
                "motor,mass_g\nM1,1.04\n",
                "flights.csv",
                HEAD + "\nTeasel,2026-01-13,600\nTeasel,2026-01-13,soon\n");
        assertThatThrownBy(() -> book.imports().carryOut(plan))
                .isInstanceOf(UserError.class)
                .hasMessageStartingWith(
                        "flights.csv, line 3, column 'duration_s': “soon” does not begin with a number");
        assertThat(entries()).isZero();
        assertThat(all(Motor.class)).isEmpty();
        assertThat(book.undoable()).isNull();
    }

    @Test
    void anImportIsOneEntryThatOneUndoTakesBack() {
        files("flights.csv", HEAD + ",motor,turns_wound\nTeasel,2026-01-13,600,M1,1500\n", "teasel.json", SHEET);
        assertThat(book.undoable()).isEqualTo("import of 2 files");
        book.undo();
        assertThat(entries()).isZero();
        assertThat(book.undoable()).isNull();
        assertThat(book.logbook().check()).isEmpty();
    }

    @Test
    void aPreviewSaysWhatWouldBeAddedAndKeepsNothing() {
        ImportPlan plan = plan(
                ImportChoices.none(), "flights.csv", HEAD + ",setting.p\nT,2026-01-13,600,1\nT,2026-01-13,601,2\n");
        ImportSummary preview = book.imports().preview(plan);
        assertThat(preview.lines()).containsExactly("Added: 2 flights, 1 session, 1 model, 2 riggings, 2 versions.");
        assertThat(entries()).isZero();
        assertThat(book.imports().carryOut(plan)).isEqualTo(preview);
    }

    @Test
    void eventsFindTheirFlightAndMarkOrSayWhichIsMissing() {
        String flights =
                HEAD + ",venue,launched_at\nTeasel,2026-01-20,600,Hall,2026-01-20T19:00\nTeasel,2026-01-20,601,Hall,\n";
        String marks = "venue,mark,height_m,limit\nHall,lamps,7.9,yes\n";
        String head = "model,session_date,venue,flight_no,launched_at,kind,at_s,value,mark,notes\n";
        String events = head + "Teasel,2026-01-20,Hall,,2026-01-20T19:00:00,touched,200,,lamps,\n"
                + "Teasel,2026-01-20,Hall,2,,top-of-climb,180,7.2,,\n";
        files("flights.csv", flights, "venue_marks.csv", marks, "flight_events.csv", events);
        List<FlightEvent> kept = all(FlightEvent.class);
        assertThat(kept).extracting(FlightEvent::value).containsExactly(null, 7.2);
        assertThat(kept.get(1).flightId()).isEqualTo(lines().get(1).flight().id());
        assertThat(files("flight_events.csv", events).addsNothing()).isTrue();
        ImportPlan wrong = plan(
                ImportChoices.none(),
                "flight_events.csv",
                head + "Teasel,2026-01-20,Hall,3,,touched,1,,,\nTeasel,2026-01-20,Hall,1,,touched,1,,moon,\n");
        assertThat(book.imports().preview(wrong).problems())
                .extracting(ImportProblem::toString)
                .containsExactly(
                        "flight_events.csv, line 2: there is no such flight of Teasel on 2026-01-20; it is found by"
                                + " launched_at or by flight_no.",
                        "flight_events.csv, line 3, column 'mark': there is no mark 'moon' at this venue.");
    }

    @Test
    void theLogbooksOwnStaysAndTheFileFillsWhatIsMissing() {
        files("motors.csv", "motor,mass_g\nM1,1.04\n", "venues.csv", "venue,usable_height_m\nHall,9.4\n");
        ImportSummary summary = files(
                "motors.csv", "motor,mass_g,loop_length_mm\nM1,1.1,340\n", "venues.csv", "venue,notes\nhall,cold\n");
        Motor motor = all(Motor.class).get(0);
        assertThat(motor.massKg()).isEqualTo(0.00104);
        assertThat(motor.loopLengthM()).isEqualTo(0.34);
        assertThat(summary.remarks()).containsExactly("The logbook's own stays: motor M1, mass.");
        assertThat(all(Venue.class)).hasSize(1);
    }

    @Test
    void aMappingIsRememberedAndUsedByItsNameOrByTheHeadings() {
        Mapping club = Mapping.of(
                "club",
                List.of(
                        ColumnRule.parse("Modell=model"),
                        ColumnRule.parse("Tag=session_date"),
                        ColumnRule.parse("Zeit=duration_s:min")));
        book.imports().remember(club);
        assertThat(book.imports().mapping("Club")).isEqualTo(club);
        files("club.csv", "Modell;Tag;Zeit\nTeasel;2026-01-13;10,5\n");
        assertThat(lines().get(0).flight().durationS()).isEqualTo(630);
        assertThat(lines().get(0).flight().asTyped()).containsEntry("durationS", "10,5 min");
        assertThatThrownBy(() -> book.imports().mapping("other"))
                .hasMessage("There is no mapping named 'other' and no such file.");
    }

    @Test
    void aColumnOnTheCommandLineMustBeInATable() {
        ImportChoices choices =
                new ImportChoices(null, List.of(ColumnRule.parse("Zeit=duration_s")), Map.of(), null, null, null);
        assertThatThrownBy(() -> plan(choices, "flights.csv", HEAD + "\n")).hasMessage("No table has a column 'Zeit'.");
    }

    @Test
    void aFileThatIsNothingKnownIsToldByName() {
        ImportPlan plan =
                plan(ImportChoices.none(), "a.json", "{\"x\": 1}", "b.csv", "a,b\n1,2,3\n", "c.csv", "colour\nred\n");
        assertThat(plan.problems())
                .extracting(ImportProblem::toString)
                .containsExactly(
                        "a.json has an unknown key 'x'; known here: rafterbook, edition, model, version, balance_mm,"
                                + " surfaces, masses, motor.",
                        "b.csv, line 2: there are 3 cells but 2 headings; the cell '3' has none.",
                        "c.csv, line 1, column 'colour': this column is not known; say what it is, setting.<name> or"
                                + " ignore.",
                        "c.csv, line 1: no column is model (model's name), which is needed.",
                        "c.csv, line 1: no column is session_date (day of the session), which is needed.",
                        "c.csv, line 1: no column is duration_s (time aloft), which is needed.");
    }

    private List<String> doubts(String... namesAndTexts) {
        return book.imports().preview(plan(ImportChoices.none(), namesAndTexts)).doubts().stream()
                .map(ImportDoubt::toString)
                .toList();
    }

    @Test
    void turnsAndTorqueBeyondWhatTheMotorBearsAreDoubtedAndTakenIn() {
        // 1.4 g on a loop of 340 mm: 44.5 x 13.386^1.5 / 1.4^0.5 = 1842 turns, with 47.5: 1966;
        // (1.4 / (0.11 x 13.386))^1.5 = 0.927 in-oz = 6.5 N mm
        String motors = "motor,loop_length_mm,mass_g\nM1,340,1.4\n";
        String flights = HEAD + ",motor,turns_wound,launch_torque_nmm\n"
                + "Teasel,2026-01-13,500,M1,1600,2.1\n"
                + "Teasel,2026-01-13,505,M1,16000,2.1\n"
                + "Teasel,2026-01-13,510,M1,1600,21\n";
        assertThat(doubts("motors.csv", motors, "flights.csv", flights))
                .containsExactly(
                        "flights.csv, line 3, turns put in: 16000 turns; this motor breaks at about 1966 turns.",
                        "flights.csv, line 4, torque at launch: 21.0 N·mm; this motor breaks at about 6.5 N·mm. Is the unit"
                                + " right?");
        assertThat(files("motors.csv", motors, "flights.csv", flights).flights())
                .isEqualTo(3);
    }

    @Test
    void aFlightOfHoursIsDoubted() {
        assertThat(doubts("flights.csv", HEAD + "\nTeasel,2026-01-13,500\nTeasel,2026-01-13,9000\n"))
                .containsExactly(
                        "flights.csv, line 3, time aloft: 150:00 aloft, more than 120:00: is the time in minutes or in"
                                + " seconds?");
    }

    @Test
    void aTableWhoseTorqueIsInAnotherUnitThanTheLogbooksIsDoubtedOnce() {
        StringBuilder before = new StringBuilder(HEAD + ",launch_torque_nmm\n");
        StringBuilder after = new StringBuilder(HEAD + ",launch_torque_nmm\n");
        for (int i = 0; i < 6; i++) {
            before.append("Teasel,2026-01-13,").append(500 + i).append(",2.1\n");
            after.append("Teasel,2026-01-20,").append(500 + i).append(",21\n");
        }
        flights(before.toString());
        assertThat(doubts("b.csv", after.toString()))
                .containsExactly("b.csv, line 2, torque at launch: About 21.0 N·mm in this table, about 2.1 N·mm in the"
                        + " logbook for this model. Is the unit right?");
        assertThat(doubts("c.csv", before.toString().replace("-13", "-27"))).isEmpty();
    }

    @Test
    void aMappingIsRememberedInTheEntryOfItsImportOrNotAtAll() {
        ImportChoices choices = new ImportChoices(
                null, List.of(ColumnRule.parse("Inc=setting.incidence:deg")), Map.of(), null, null, null);
        ImportPlan plan = plan(choices, "q.csv", HEAD + ",Inc\nTeasel,2026-01-13,500,2.5\n");
        assertThatThrownBy(() -> book.imports().carryOut(plan, "two\nlines", Progress.none()))
                .isInstanceOf(UserError.class);
        assertThat(book.isEmpty()).isTrue();
        book.imports().carryOut(plan, "club", Progress.none());
        assertThat(book.imports().mappings()).extracting(Mapping::name).containsExactly("club");
        assertThat(book.undo().why()).isEqualTo("import of q.csv");
        assertThat(book.isEmpty()).isTrue();
    }

    @Test
    void aWindersRatioIsANumberAboveZero() {
        for (double ratio : new double[] {0, -15, Double.NaN, Double.POSITIVE_INFINITY}) {
            ImportChoices choices = new ImportChoices(null, List.of(), Map.of(), null, ratio, null);
            assertThat(plan(choices, "q.csv", HEAD + "\nTeasel,2026-01-13,500\n")
                            .problems())
                    .extracting(ImportProblem::sentence)
                    .containsExactly("A winder's ratio is a number above zero, such as 15.");
        }
    }
}
