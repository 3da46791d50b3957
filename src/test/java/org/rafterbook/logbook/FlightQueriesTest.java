package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rafterbook.logbook.Samples.list;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightDraft;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.PressureSource;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;

class FlightQueriesTest {

    @TempDir
    Path folder;

    private Logbook logbook;
    private final Venue hall = Samples.venue("Saltmarsh Sports Hall");
    private final Session second = Samples.session(hall, Samples.DAY.plusDays(7));
    private final Session first = Samples.session(null, Samples.DAY);
    private final Model teasel = Samples.model("Teasel");
    private final Model marram = Samples.model("Marram");
    private final Version t1 = Samples.version(teasel, 1);
    private final Version t2 = Samples.version(teasel, 2);
    private final Version m1 = Samples.version(marram, 1);
    private final Rigging a = Samples.rigging(t1, 1, null);
    private final Rigging b = Samples.rigging(t2, 2, a);
    private final Rigging again = Samples.rigging(t1, 3, b);
    private final Rigging m = Samples.rigging(m1, 1, null);
    private final Motor motor = Samples.motor("M1");
    private final Wind wind1 = Samples.wind(motor, first, 1, 1500.0, null);
    private final Wind wind2 = Samples.wind(motor, second, 2, 1550.0, 50.0);
    private final Flight f1 = Samples.flight(first, a, wind1, 1, 600.0, 500.0, "turned left, 50% of the time");
    private final Flight f2 = Samples.flight(first, m, null, 2, 400.0, null, "Größe passt; a_b");
    private final Flight f3 = Samples.flight(first, b, null, 3, 610.0, null, null);
    private final Flight f4 = Samples.flight(second, again, wind2, 1, 630.0, null, "TURNED right");
    private final Flight f5 = Samples.flight(second, null, null, 2, 300.0, null, "model not known");
    private final Flight flying = Samples.flight(second, again, null, 3, null, null, null);
    private final Flight aborted = FlightDraft.of(Samples.flight(second, again, null, 4, null, null, null))
            .ending(Ending.ABORTED)
            .done();

    @BeforeEach
    void open() {
        logbook = Logbook.open(folder.resolve("season.rafterbook"), Mode.CREATE);
        logbook.change("All", w -> {
            List.of(hall, second, first, teasel, marram, t1, t2, m1, a, b, again, m, motor, wind1, wind2)
                    .forEach(w::insert);
            List.of(f4, aborted, flying, f3, f5, f2, f1).forEach(w::insert);
            Flight gone = w.insert(Samples.flight(first, a, null, 9, 1.0, null, "turned over"));
            w.remove(Flight.class, gone.id());
        });
    }

    @AfterEach
    void close() {
        logbook.close();
    }

    @Test
    void flightsComeInFlyingOrderWithAllTheyPointTo() {
        List<FlightLine> all = lines(FlightQueries::all);
        assertThat(all).extracting(FlightLine::flight).containsExactly(f1, f2, f3, f4, f5, flying, aborted);
        assertThat(all.get(0)).isEqualTo(new FlightLine(f1, first, a, t1, teasel, wind1, motor, null));
        assertThat(all.get(1)).isEqualTo(new FlightLine(f2, first, m, m1, marram, null, null, null));
        assertThat(all.get(3)).isEqualTo(new FlightLine(f4, second, again, t1, teasel, wind2, motor, hall));
        assertThat(all.get(4)).isEqualTo(new FlightLine(f5, second, null, null, null, null, null, hall));
        assertThat(all.get(3).version()).as("read once").isSameAs(all.get(0).version());
    }

    @Test
    void flightsAreFoundBySessionModelAndRigging() {
        assertThat(flights(q -> q.ofSession(first.id()))).containsExactly(f1, f2, f3);
        assertThat(flights(q -> q.ofModel(teasel.id()))).containsExactly(f1, f3, f4, flying, aborted);
        assertThat(flights(q -> q.ofModel(marram.id()))).containsExactly(f2);
        assertThat(flights(q -> q.ofRigging(again.id()))).containsExactly(f4, flying, aborted);
        assertThat(flights(q -> q.ofSession("nowhere"))).isEmpty();
    }

    @Test
    void aFlightKeepsWhatItPointsToWhenThatIsRemoved() {
        logbook.change("Venue removed", w -> w.remove(Venue.class, hall.id()));
        assertThat(lines(q -> q.ofSession(second.id())).get(0).venue()).isEqualTo(hall);
    }

    @Test
    void onlyFlightsWithoutTimeThatWereNotAbortedAreInTheAir() {
        assertThat(flights(FlightQueries::inTheAir)).containsExactly(flying);
        Session lastSession = logbook.find(r -> r.flights().lastSession());
        assertThat(lastSession).isEqualTo(second);
    }

    @Test
    void flightsAreCountedByVersionAndRigging() {
        Map<String, Integer> versions = logbook.read(r -> r.flights().countsByVersion(teasel.id()));
        assertThat(versions).isEqualTo(Map.of(t1.id(), 4, t2.id(), 1));
        Map<String, Integer> riggings = logbook.read(r -> r.flights().countsByRigging(teasel.id()));
        assertThat(riggings).isEqualTo(Map.of(a.id(), 1, b.id(), 1, again.id(), 3));
    }

    @Test
    void notesAreSearchedTheNewestFirst() {
        assertThat(notes("turned", null, 10)).containsExactly(f4, f1);
        assertThat(notes("turned", null, 1)).containsExactly(f4);
        assertThat(notes("NOT KNOWN", null, 10)).containsExactly(f5);
        assertThat(notes("turned", marram.id(), 10)).isEmpty();
        assertThat(notes("turned", teasel.id(), 10)).containsExactly(f4, f1);
    }

    @Test
    void signsInASearchStandForThemselves() {
        assertThat(notes("50%", null, 10)).containsExactly(f1);
        assertThat(notes("%", null, 10)).containsExactly(f1);
        assertThat(notes("a_b", null, 10)).containsExactly(f2);
        assertThat(notes("_", null, 10)).containsExactly(f2);
        assertThat(notes("\\", null, 10)).isEmpty();
        assertThat(notes("'; DROP TABLE flight; --", null, 10)).isEmpty();
    }

    @Test
    void lettersBeyondAToZAreFoundInUpperAndLowerCase() {
        assertThat(notes("GRÖSSE", null, 10)).isEmpty();
        assertThat(notes("größe", null, 10)).containsExactly(f2);
        Flight changed = FlightDraft.of(f3).notes("ÄRGERLICH, Überzug").done();
        logbook.enter("Notes", w -> w.update(changed));
        assertThat(notes("ärgerlich", null, 10)).containsExactly(changed);
        assertThat(notes("überzug", null, 10)).containsExactly(changed);
    }

    @Test
    void notesOfEventsAreSearchedToo() {
        logbook.enter(
                "Event",
                w -> w.insert(new FlightEvent(
                        Logbook.newId(), f3.id(), FlightEventKind.TOUCHED, 120.0, null, null, "brushed the banner")));
        assertThat(notes("banner", null, 10)).containsExactly(f3);
    }

    @Test
    void aMotorsWindsComeInTheirOrder() {
        assertThat(list(logbook, r -> r.flights().windsOfMotor(motor.id()))).containsExactly(wind1, wind2);
        Wind last = logbook.find(r -> r.flights().lastWindOfMotor(motor.id()));
        assertThat(last).isEqualTo(wind2);
        Wind none = logbook.find(r -> r.flights().lastWindOfMotor("nowhere"));
        assertThat(none).isNull();
    }

    @Test
    void theAirComesInTimeOrder() {
        AirReading late = air(first, Samples.EVENING.plusSeconds(3600));
        AirReading early = air(first, Samples.EVENING);
        AirReading day = air(first, null);
        AirReading other = air(second, Samples.EVENING);
        logbook.change("Air", w -> List.of(late, early, day, other).forEach(w::insert));
        assertThat(list(logbook, r -> r.flights().airOf(List.of(first.id())))).containsExactly(day, early, late);
        assertThat(list(logbook, r -> r.flights().airOf(List.of(first.id(), second.id()))))
                .hasSize(4);
        assertThat(list(logbook, r -> r.flights().airOf(List.of()))).isEmpty();
    }

    @Test
    void theQuestionsOfTheHallUseIndexes() {
        try (Sql sql = Connections.reader(logbook.file())) {
            for (String question : List.of(
                    "SELECT * FROM flight f WHERE f.gone_at IS NULL AND f.duration_s IS NULL AND f.ending IS NOT 'aborted'",
                    "SELECT * FROM flight f WHERE f.gone_at IS NULL AND f.session_id = 'x'",
                    "SELECT * FROM flight f WHERE f.rigging_id IN (SELECT id FROM rigging WHERE model_id = 'x')",
                    "SELECT * FROM wind w WHERE w.gone_at IS NULL AND w.motor_id = 'x' ORDER BY w.ordinal DESC, w.id DESC LIMIT 1")) {
                assertThat(sql.list("EXPLAIN QUERY PLAN " + question, r -> r.getString(4)))
                        .as(question)
                        .noneMatch(step -> step.matches("SCAN \\w+"))
                        .anyMatch(step -> step.contains("USING"));
            }
        }
    }

    private static AirReading air(Session session, @Nullable Instant at) {
        return new AirReading(
                Logbook.newId(), session.id(), at, 291.0, 0.5, 101_300.0, PressureSource.MEASURED, Map.of());
    }

    private List<FlightLine> lines(Function<FlightQueries, List<FlightLine>> question) {
        return list(logbook, r -> question.apply(r.flights()));
    }

    private List<Flight> flights(Function<FlightQueries, List<FlightLine>> question) {
        return lines(question).stream().map(FlightLine::flight).toList();
    }

    private List<Flight> notes(String text, @Nullable String modelId, int limit) {
        return flights(q -> q.notesContaining(text, modelId, limit));
    }

    @Test
    void whatFlewLastComesFirst() {
        assertThat(list(logbook, r -> r.flights().modelsFlown()))
                .extracting(Model::name)
                .containsExactly("Teasel", "Marram");
        assertThat(list(logbook, r -> r.flights().versionsFlown(teasel.id())))
                .extracting(Version::number)
                .containsExactly(1, 2);
        assertThat(line(r -> r.flights().lastOfModel(marram.id())).flight().id())
                .isEqualTo(f2.id());
        assertThat(line(r -> r.flights().lastOfModel(teasel.id())).flight().id())
                .isEqualTo(aborted.id());
        assertThat(line(r -> r.flights().lastWithMotorMass(t1)).flight().id()).isEqualTo(f4.id());
        assertThat(list(logbook, r -> Arrays.asList(r.flights().lastWithMotorMass(m1))))
                .containsExactly((FlightLine) null);
    }

    private FlightLine line(Query<FlightLine> query) {
        return logbook.read(query);
    }
}
