package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Session;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;

/** What another program has put wrong in the file is found and said. */
class SoundnessCheckTest {

    @TempDir
    Path folder;

    private Path file;
    private final Model teasel = Samples.model("Teasel");
    private final Model marram = Samples.model("Marram");
    private final Version v1 = Samples.version(teasel, 1);
    private final Version v2 = Samples.version(teasel, 2);
    private final Rigging r1 = Samples.rigging(v1, 1, null);
    private final Rigging r2 = Samples.rigging(v2, 2, r1);
    private final Rigging r3 = Samples.rigging(v1, 3, r2);
    private final Session session = Samples.session(null, Samples.DAY);
    private final Session later = Samples.session(null, Samples.DAY.plusDays(1));
    private final Motor motor = Samples.motor("M1");
    private final Wind wind = Samples.wind(motor, session, 1, 1500.0, 100.0);

    @BeforeEach
    void make() {
        file = folder.resolve("season.rafterbook");
        try (Logbook logbook = Logbook.open(file, Mode.CREATE)) {
            logbook.change("All", w -> {
                List.of(teasel, marram, v1, v2, r1, r2, r3, session, later, motor, wind)
                        .forEach(w::insert);
                w.insert(Samples.flight(session, r1, wind, 1, 600.0, 1400.0, null));
                w.insert(Samples.flight(session, r2, null, 2, 620.0, null, null));
            });
        }
    }

    @Test
    void aSoundLogbookHasNothingToSay() {
        assertThat(check()).isEmpty();
    }

    @Test
    void brokenChainsOfRiggingsAreSaid() {
        spoil("UPDATE rigging SET previous_id = (SELECT id FROM rigging WHERE ordinal = 1) WHERE ordinal = 3");
        assertThat(check())
                .containsExactly(
                        "The riggings of Teasel do not follow each other: number 3 does not name the one before it.");
    }

    @Test
    void aRemovedRiggingInTheChainIsSaidTwice() {
        spoil("UPDATE rigging SET gone_at = 'x' WHERE ordinal = 2");
        assertThat(check())
                .containsExactlyInAnyOrder(
                        "The riggings of Teasel do not follow each other: number 3 does not name the one before it.",
                        "1 of the rigging rows name a rigging that was removed.",
                        "1 of the flight rows name a rigging that was removed.");
    }

    @Test
    void equalNumbersAreSaid() {
        spoil("UPDATE rigging SET ordinal = 2 WHERE ordinal = 3", "UPDATE flight SET ordinal = 1");
        assertThat(check())
                .contains(
                        "Teasel has 2 riggings with the number 2.",
                        "The session of 2026-01-20 has 2 flights with the number 1.");
    }

    @Test
    void aVersionOfAnotherModelIsSaid() {
        spoil("UPDATE version SET model_id = '" + marram.id() + "' WHERE number = 2");
        assertThat(check()).containsExactly("Rigging 2 of Teasel is set to a version of another model.");
    }

    @Test
    void equalDigestsAreSaid() {
        spoil("DROP INDEX version_digest", "UPDATE version SET digest = 'same'");
        assertThat(check()).containsExactly("Versions 1 and 2 of Teasel have the same settings.");
    }

    @Test
    void impossibleTurnsAreSaid() {
        spoil("DROP TRIGGER flight_turns_left_update", "UPDATE flight SET turns_left = 1401 WHERE wind_id IS NOT NULL");
        assertThat(check()).containsExactly("Flight 1 of 2026-01-20 has more turns left than were on the motor.");
    }

    @Test
    void aWindOfAnotherSessionIsSaid() {
        spoil("UPDATE wind SET session_id = '" + later.id() + "'");
        assertThat(check()).containsExactly("Flight 1 of 2026-01-20 was flown on a wind of another session.");
    }

    @Test
    void rowsThatPointNowhereAreSaid() {
        spoil("PRAGMA foreign_keys = OFF", "DELETE FROM session");
        assertThat(check())
                .contains(
                        "2 of the flight rows name a session that is not there.",
                        "1 of the wind rows name a session that is not there.");
    }

    @Test
    void rowsThatBreakATablesCheckAreSaid() {
        spoil("PRAGMA ignore_check_constraints = ON", "UPDATE flight SET duration_s = -1 WHERE ordinal = 1");
        assertThat(check()).containsExactly("The file is damaged: CHECK constraint failed in flight.");
    }

    private List<String> check() {
        try (Logbook logbook = Logbook.open(file, Mode.READ_ONLY)) {
            return logbook.check();
        }
    }

    private void spoil(String... statements) {
        try (Sql sql = Connections.writer(file)) {
            List.of(statements).forEach(sql::execute);
        }
    }
}
