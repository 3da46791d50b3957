package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.rafterbook.logbook.Samples.list;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.AirframeEvent;
import org.rafterbook.airframe.Model;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.units.UserError;

class LogbookTest {

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
    void whatIsEnteredIsThereAfterReopening() {
        Model teasel = Samples.model("Teasel");
        logbook.enter("New model Teasel", w -> w.insert(teasel));
        logbook.close();

        logbook = Logbook.open(folder.resolve("season.rafterbook"), Mode.EXISTING);

        assertThat(logbook.<Model>read(r -> r.get(Model.class, teasel.id()))).isEqualTo(teasel);
    }

    @Test
    void aQueryMayAnswerNull() {
        assertThat(logbook.<Model>find(r -> r.find(Model.class, "nowhere"))).isNull();
        assertThatThrownBy(() -> logbook.read(r -> r.get(Model.class, "nowhere")))
                .isInstanceOf(UserError.class)
                .hasMessage("The logbook holds no model with the id nowhere.");
    }

    @Test
    void anEntryThatThrowsLeavesNothing() {
        assertThatThrownBy(() -> logbook.enter("half", w -> {
                    w.insert(Samples.model("Teasel"));
                    throw new IllegalStateException("on the way");
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("on the way");
        assertThat(list(logbook, r -> r.all(Model.class))).isEmpty();
        assertThat(logbook.undoable()).isNull();
    }

    @Test
    void instantsComeBackCutToTheMillisecond() {
        Model teasel = Samples.model("Teasel");
        Instant exact = Instant.parse("2026-01-20T18:00:00.123456789Z");
        AirframeEvent kept = logbook.enter("Repair", w -> {
            w.insert(teasel);
            return w.insert(new AirframeEvent(Logbook.newId(), teasel.id(), exact, "repair", null, null));
        });
        assertThat(kept.at()).isEqualTo(Instant.parse("2026-01-20T18:00:00.123Z"));
        assertThat(logbook.<AirframeEvent>read(r -> r.get(AirframeEvent.class, kept.id())))
                .isEqualTo(kept);
    }

    @Test
    void anUpdateReplacesAndARemovedRowIsNeverAnswered() {
        Venue hall = Samples.venue("Saltmarsh Sports Hall");
        logbook.enter("New venue", w -> w.insert(hall));
        Venue measured = new Venue(hall.id(), hall.name(), 12.0, 9.4, 7.9, null, Map.of("usableHeightM", "7.9 m"));
        logbook.enter("Venue measured", w -> w.update(measured));
        assertThat(logbook.<Venue>read(r -> r.get(Venue.class, hall.id()))).isEqualTo(measured);

        logbook.change("Venue removed", w -> {
            w.remove(Venue.class, hall.id());
        });
        assertThat(logbook.<Venue>find(r -> r.find(Venue.class, hall.id()))).isNull();
        assertThat(list(logbook, r -> r.all(Venue.class))).isEmpty();
        assertThatThrownBy(() -> logbook.enter("again", w -> w.update(measured)))
                .isInstanceOf(UserError.class)
                .hasMessageStartingWith("The logbook holds no venue");
    }

    @Test
    void rowsAreFoundByAnyComponent() {
        Venue hall = Samples.venue("Saltmarsh Sports Hall");
        Session first = Samples.session(hall, Samples.DAY);
        Session second = Samples.session(null, Samples.DAY.plusDays(7));
        logbook.enter("Sessions", w -> List.of(w.insert(hall), w.insert(first), w.insert(second)));

        assertThat(list(logbook, r -> r.where(Session.class, "venueId", hall.id())))
                .containsExactly(first);
        assertThat(list(logbook, r -> r.where(Session.class, "venueId", null))).containsExactly(second);
        assertThat(list(logbook, r -> r.where(Session.class, "localDate", Samples.DAY)))
                .containsExactly(first);
        assertThat(list(
                        logbook,
                        r -> r.whereIn(
                                Session.class,
                                "localDate",
                                List.of(Samples.DAY.plusDays(7), Samples.DAY, Samples.DAY))))
                .containsExactly(first, second);
        assertThat(list(logbook, r -> r.whereIn(Session.class, "id", List.of())))
                .isEmpty();
        assertThatThrownBy(() -> logbook.read(r -> r.where(Session.class, "venue_id", "x")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void listenersHearEachChangeAndNothingElse() {
        List<Thread> heard = new ArrayList<>();
        Subscription subscription = logbook.onChange(() -> heard.add(Thread.currentThread()));
        Model teasel = Samples.model("Teasel");

        logbook.enter("New model", w -> w.insert(teasel));
        assertThat(heard).containsExactly(Thread.currentThread());
        logbook.enter("same again", w -> w.update(teasel));
        logbook.enter("looking only", w -> w.all(Model.class));
        assertThat(heard).hasSize(1);
        logbook.undo();
        assertThat(heard).hasSize(2);

        subscription.cancel();
        logbook.enter("New model", w -> w.insert(Samples.model("Marram")));
        assertThat(heard).hasSize(2);
    }

    @Test
    void aListenersFailureDoesNotMakeTheEntryLookLost() {
        Logger log = Logger.getLogger(Logbook.class.getName());
        log.setLevel(Level.OFF);
        logbook.onChange(() -> {
            throw new IllegalStateException("expected in this test");
        });
        Model teasel = logbook.enter("New model", w -> w.insert(Samples.model("Teasel")));
        assertThat(list(logbook, r -> r.all(Model.class))).containsExactly(teasel);
        log.setLevel(null);
    }

    @Test
    void preferencesAreKeptLoggedAndForgotten() {
        logbook.change("Theme", w -> {
            w.preference("theme", "dim");
        });
        assertThat(logbook.<String>find(r -> r.preference("theme"))).isEqualTo("dim");
        assertThat(logbook.undoable()).isNull();
        logbook.change("Theme", w -> {
            w.preference("theme", null);
        });
        assertThat(logbook.<String>find(r -> r.preference("theme"))).isNull();
    }

    @Test
    void theCacheKeepsOnlyTheNewestEngine() {
        logbook.keepComputed("lattice", "d1", "1", "{\"a\":1}");
        logbook.keepComputed("lattice", "d1", "2", "{\"a\":2}");
        assertThat(logbook.<String>find(r -> r.computed("lattice", "d1", "1"))).isNull();
        assertThat(logbook.<String>find(r -> r.computed("lattice", "d1", "2"))).isEqualTo("{\"a\":2}");
        assertThat(logbook.undoable()).isNull();
    }

    @Test
    void aReaderIsRefusedAfterItsQuery() {
        Reader[] kept = new Reader[1];
        logbook.<Reader>read(r -> kept[0] = r);
        assertThatThrownBy(() -> kept[0].all(Flight.class)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void anEntryWithinAnEntryIsRefusedInsteadOfWaitingForEver() {
        assertThatThrownBy(() -> logbook.enter("outer", w -> logbook.enter("inner", i -> 1)))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void aClosedLogbookTakesNoEntryAndMayBeClosedTwice() {
        logbook.close();
        logbook.close();
        assertThatThrownBy(() -> logbook.enter("late", w -> 1)).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> logbook.read(r -> 1)).isInstanceOf(IllegalStateException.class);
        assertThat(folder.toFile().list()).containsExactly("season.rafterbook");
    }
}
