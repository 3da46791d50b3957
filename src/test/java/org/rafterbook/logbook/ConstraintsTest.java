package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightDraft;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Trial;
import org.rafterbook.flight.Venue;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.units.UserError;

class ConstraintsTest {

    @TempDir
    Path folder;

    private Logbook logbook;
    private final Session session = Samples.session(null, Samples.DAY);
    private final Motor motor = Samples.motor("M1");
    private final Wind wind = Samples.wind(motor, session, 1, 1500.0, 100.0);
    private final Model model = Samples.model("Teasel");

    @BeforeEach
    void open() {
        logbook = Logbook.open(folder.resolve("season.rafterbook"), Mode.CREATE);
        logbook.enter("Before", w -> List.of(w.insert(session), w.insert(motor), w.insert(wind), w.insert(model)));
    }

    @AfterEach
    void close() {
        logbook.close();
    }

    @Test
    void turnsLeftAboveTheTurnsOnTheMotorAreRefusedFromEitherSide() {
        String sentence = "Turns left cannot be above the turns wound less those backed off.";
        Flight flight = Samples.flight(session, null, wind, 1, 600.0, 1400.0, null);
        refused(sentence, w -> w.insert(FlightDraft.of(flight).turnsLeft(1401.0).done()));
        logbook.enter("Flight", w -> w.insert(flight));
        refused(sentence, w -> w.update(FlightDraft.of(flight).turnsLeft(1401.0).done()));
        refused(sentence, w -> w.update(wound(1499.0)));
        assertThatCode(() -> logbook.enter("Wind", w -> w.update(wound(1501.0))))
                .doesNotThrowAnyException();
    }

    @ParameterizedTest
    @CsvSource({
        "0, A time aloft must be above zero and below 24 hours.",
        "-1, A time aloft must be above zero and below 24 hours.",
        "86400, A time aloft must be above zero and below 24 hours."
    })
    void impossibleTimesAreRefused(double durationS, String sentence) {
        refused(sentence, w -> w.insert(Samples.flight(session, 1, durationS)));
    }

    @Test
    void impossibleFlightsAreRefusedWithTheirReason() {
        Flight flight = Samples.flight(session, null, wind, 1, 600.0, null, null);
        refused(
                "Turns left cannot be below zero.",
                w -> w.insert(FlightDraft.of(flight).turnsLeft(-1.0).done()));
        refused("Flights of a session are counted from 1.", w -> w.insert(Samples.flight(session, 0, 600.0)));
        refused(
                "The flight names a session that is not in the logbook.",
                w -> w.insert(Samples.flight(Samples.session(null, Samples.DAY), 1, 600.0)));
        logbook.enter("Flight", w -> w.insert(flight));
        refused("The logbook already holds this flight.", w -> w.insert(flight));
    }

    @Test
    void namesAreThereAndUnique() {
        refused("A venue needs a name.", w -> w.insert(Samples.venue("  ")));
        refused("There is already a model of this name.", w -> w.insert(Samples.model("Teasel")));
        logbook.enter("Venue", w -> w.insert(Samples.venue("Hall")));
        refused("There is already a venue of this name.", w -> w.insert(Samples.venue("Hall")));
        refused("There is already a motor of this name.", w -> w.insert(Samples.motor("M1")));
        logbook.change("Motor gone", w -> {
            w.remove(Wind.class, wind.id());
            w.remove(Motor.class, motor.id());
        });
        assertThatCode(() -> logbook.enter("Motor", w -> w.insert(Samples.motor("M1"))))
                .doesNotThrowAnyException();
    }

    @Test
    void oneDigestIsOneVersionAndOneTrialIsOpenAtATime() {
        Version version = Samples.version(model, 1);
        logbook.enter("Version", w -> w.insert(version));
        refused(
                "These settings are already a version.",
                w -> w.insert(new Version(
                        Logbook.newId(),
                        model.id(),
                        1,
                        2,
                        version.digest(),
                        null,
                        false,
                        null,
                        null,
                        null,
                        false,
                        Samples.EVENING)));
        var setting = new SettingDef(
                Logbook.newId(), model.id(), "wing incidence", "ANGLE", "deg", null, null, null, null, null, null, 1);
        logbook.enter("Trial", w -> {
            w.insert(setting);
            return w.insert(trial(setting.id(), "ABBA"));
        });
        refused(
                "A trial is already open for this model; judge or end it first.",
                w -> w.insert(trial(setting.id(), "ABAB")));
        refused(
                "A trial's drawn order names every flight of both values once.",
                w -> w.insert(trial(setting.id(), "AB")));
    }

    @Test
    void aRefusedRowOfAnEntryLeavesTheOthersToTheEntrysMaker() {
        logbook.change("Two venues", w -> {
            w.insert(Samples.venue("Hall"));
            assertThatThrownBy(() -> w.insert(Samples.venue("Hall"))).isInstanceOf(UserError.class);
        });
        assertThat(Samples.list(logbook, r -> r.all(Venue.class))).hasSize(1);
    }

    @Test
    void everyCheckIsNamedByASentence() {
        try (Sql sql = Connections.reader(logbook.file())) {
            String tables = Json.array(Tables.names());
            List<String> schema = sql.list(
                    "SELECT sql FROM sqlite_schema WHERE type = 'table' AND name IN (SELECT value FROM json_each(?))",
                    rows -> rows.getString(1),
                    tables);
            for (String table : schema) {
                int checks = table.split("CHECK \\(", -1).length;
                int sentences = table.split("CONSTRAINT \"[A-Z][^\"()]+\\.\"", -1).length;
                assertThat(sentences).as(table).isEqualTo(checks);
            }
        }
    }

    private void refused(String sentence, Entry<?> entry) {
        assertThatThrownBy(() -> logbook.enter("refused", entry))
                .isInstanceOfSatisfying(
                        UserError.class, e -> assertThat(e.kind()).isEqualTo(UserError.Kind.BAD_INPUT))
                .hasMessage(sentence);
    }

    private Wind wound(double turns) {
        Wind changed = Samples.wind(motor, session, 1, turns, 100.0);
        return new Wind(
                wind.id(),
                changed.motorId(),
                changed.sessionId(),
                1,
                changed.woundAt(),
                changed.turnsWound(),
                changed.turnsBackedOff(),
                null,
                null,
                null,
                null,
                null,
                Map.of());
    }

    private Trial trial(String settingId, String order) {
        return new Trial(
                Logbook.newId(),
                model.id(),
                settingId,
                0.03,
                null,
                0.05,
                null,
                2,
                7,
                order,
                Samples.EVENING,
                null,
                null);
    }
}
