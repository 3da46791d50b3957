package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.rafterbook.logbook.Samples.list;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.airframe.Model;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightDraft;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.units.UserError;

class UndoTest {

    @TempDir
    Path folder;

    private Logbook logbook;

    @BeforeEach
    void open() {
        logbook = Logbook.open(folder.resolve("season.rafterbook"), Mode.CREATE);
    }

    @AfterEach
    void close() {
        logbook.close();
    }

    @Test
    void anEmptyLogbookHasNothingToUndo() {
        assertThat(logbook.undoable()).isNull();
        assertThatThrownBy(logbook::undo).isInstanceOf(UserError.class).hasMessage("There is nothing to undo.");
    }

    @Test
    void undoSaysWhatItTookBackAndWhenThatWasEntered() {
        Instant before = Instant.now().minusMillis(2);
        logbook.enter("New model Teasel", w -> w.insert(Samples.model("Teasel")));
        assertThat(logbook.undoable()).isEqualTo("New model Teasel");

        Undone undone = logbook.undo();

        assertThat(undone.why()).isEqualTo("New model Teasel");
        assertThat(undone.enteredAt()).isBetween(before, Instant.now());
        assertThat(list(logbook, r -> r.all(Model.class))).isEmpty();
        assertThat(logbook.undoable()).isNull();
    }

    @Test
    void undoGoesBackEntryByEntryAndStaysUndoneAfterARestart() {
        Session session = Samples.session(null, Samples.DAY);
        Flight flight = Samples.flight(session, 1, null);
        Flight landed = FlightDraft.of(Samples.flight(session, 1, 650.0))
                .notes("turned left")
                .done();
        logbook.enter("Session", w -> w.insert(session));
        logbook.enter("Launch", w -> w.insert(flight));
        Flight update = new Flight(
                flight.id(),
                landed.sessionId(),
                null,
                null,
                1,
                1,
                landed.launchedAt(),
                null,
                650.0,
                landed.durationSource(),
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
                "turned left",
                landed.asTyped());
        logbook.enter("Landing", w -> w.update(update));

        assertThat(logbook.undo().why()).isEqualTo("Landing");
        assertThat(list(logbook, r -> r.all(Flight.class))).containsExactly(flight);
        reopen();
        assertThat(logbook.undoable()).isEqualTo("Launch");
        assertThat(list(logbook, r -> r.all(Flight.class))).containsExactly(flight);
        assertThat(logbook.undo().why()).isEqualTo("Launch");
        reopen();
        assertThat(list(logbook, r -> r.all(Flight.class))).isEmpty();
        assertThat(list(logbook, r -> r.all(Session.class))).containsExactly(session);
    }

    @Test
    void whatIsEnteredAfterAnUndoIsUndoneFirst() {
        logbook.enter("first", w -> w.insert(Samples.venue("A")));
        logbook.enter("second", w -> w.insert(Samples.venue("B")));
        logbook.undo();
        logbook.enter("third", w -> w.insert(Samples.venue("C")));
        assertThat(logbook.undo().why()).isEqualTo("third");
        assertThat(logbook.undo().why()).isEqualTo("first");
        assertThatThrownBy(logbook::undo).isInstanceOf(UserError.class);
    }

    @Test
    void aRowChangedTwiceInOneEntryGoesBackToWhereItBegan() {
        Venue hall = Samples.venue("Hall");
        logbook.enter("New", w -> w.insert(hall));
        logbook.enter("Twice", w -> {
            w.update(named(hall, "Hall 2"));
            w.update(named(hall, "Hall 3"));
            w.remove(Venue.class, hall.id());
            return w.insert(Samples.venue("Hall 3"));
        });
        logbook.undo();
        assertThat(list(logbook, r -> r.all(Venue.class))).containsExactly(hall);
    }

    @Test
    void aNameFreedByUndoCanBeUsedAgain() {
        logbook.enter("New model", w -> w.insert(Samples.model("Teasel")));
        logbook.undo();
        Model again = logbook.enter("New model", w -> w.insert(Samples.model("Teasel")));
        assertThat(list(logbook, r -> r.all(Model.class))).containsExactly(again);
    }

    @Test
    void preferencesOfAnEntryStayWhenItsRowsAreTakenBack() {
        logbook.enter("Mapping and flights", w -> {
            w.preference("mapping", "a=b");
            return w.insert(Samples.venue("Hall"));
        });
        assertThat(logbook.undo().why()).isEqualTo("Mapping and flights");
        assertThat(logbook.<String>find(r -> r.preference("mapping"))).isEqualTo("a=b");
        assertThat(logbook.undoable()).isNull();
    }

    @Test
    void anEntryWhoseRowsWereChangedBehindTheLogIsNotUndone() {
        Venue hall = logbook.enter("New venue", w -> w.insert(Samples.venue("Hall")));
        close();
        try (Sql sql = Connections.writer(folder.resolve("season.rafterbook"))) {
            sql.run("UPDATE venue SET notes = 'by another program'");
        }
        logbook = Logbook.open(folder.resolve("season.rafterbook"), Mode.EXISTING);
        assertThatThrownBy(logbook::undo)
                .isInstanceOf(UserError.class)
                .hasMessage("'New venue' cannot be undone: what it wrote was changed afterwards.");
        assertThat(list(logbook, r -> r.all(Venue.class))).extracting(Venue::id).containsExactly(hall.id());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void anyHistoryUndoneStepByStepPassesEachOfItsStates(long seed) {
        Random random = new Random(seed);
        Deque<Set<Venue>> states = new ArrayDeque<>();
        for (int entry = 0; entry < 25; entry++) {
            states.push(venues());
            int changes = 1 + random.nextInt(4);
            int number = entry;
            logbook.change("entry " + number, w -> {
                for (int i = 0; i < changes; i++) {
                    anyChange(w, random, "venue " + number + "." + i);
                }
            });
            if (random.nextInt(4) == 0) {
                logbook.undo();
                assertThat(venues()).as("seed %d", seed).isEqualTo(states.pop());
            }
        }
        while (!states.isEmpty()) {
            logbook.undo();
            assertThat(venues()).as("seed %d", seed).isEqualTo(states.pop());
        }
        assertThat(logbook.check()).isEmpty();
    }

    private static void anyChange(Writer w, Random random, String name) {
        List<Venue> all = w.all(Venue.class);
        int kind = all.isEmpty() ? 0 : random.nextInt(3);
        if (kind == 0) {
            w.insert(Samples.venue(name));
        } else if (kind == 1) {
            w.update(named(all.get(random.nextInt(all.size())), name));
        } else {
            // A venue added beside it keeps each entry from ending where it began.
            w.remove(Venue.class, all.get(random.nextInt(all.size())).id());
            w.insert(Samples.venue(name));
        }
    }

    private Set<Venue> venues() {
        return new HashSet<>(list(logbook, r -> r.all(Venue.class)));
    }

    private static Venue named(Venue venue, String name) {
        return new Venue(venue.id(), name, 1.5, venue.officialHeightM(), 3.0, venue.notes(), venue.asTyped());
    }

    private void reopen() {
        logbook.close();
        logbook = Logbook.open(folder.resolve("season.rafterbook"), Mode.EXISTING);
    }
}
