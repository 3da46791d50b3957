package org.rafterbook.work;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightDraft;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.PressureSource;
import org.rafterbook.flight.Recovered;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Trial;
import org.rafterbook.flight.Venue;
import org.rafterbook.flight.VenueMark;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Mode;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindDraft;

/** Writes invented evenings of one model into a real logbook, for tests and pictures of the review. */
public final class ReviewEvenings implements AutoCloseable {

    private final Book book;
    private final Model model;
    private final Motor motor;
    private Session session;
    private int ordinal;
    private int winds;

    public ReviewEvenings(Path file) {
        book = Book.open(file, Mode.CREATE, Clock.fixed(Instant.parse("2026-01-20T19:00:00Z"), ZoneOffset.UTC));
        model = book.riggings().addModel("Teasel");
        motor = book.logbook()
                .enter(
                        "motor",
                        w -> w.insert(new Motor(
                                Logbook.newId(), "A1", null, 0.34, 0.0016, null, 1, null, null, null, Map.of())));
        session = evening("2026-01-20");
    }

    public Book book() {
        return book;
    }

    public Model model() {
        return model;
    }

    /** A setting of the model in a unit, such as LENGTH in mm. */
    public SettingDef setting(String label, String quantity, String unit) {
        return book.riggings().addSetting(model.id(), label, quantity, unit, null, null, null);
    }

    public Session evening(String date) {
        session = book.logbook()
                .enter(
                        "session",
                        w -> w.insert(new Session(
                                Logbook.newId(), null, LocalDate.parse(date), ZoneId.of("UTC"), null, null)));
        book.logbook()
                .enter(
                        "air",
                        w -> w.insert(new AirReading(
                                Logbook.newId(),
                                session.id(),
                                null,
                                294.15,
                                null,
                                101_300.0,
                                PressureSource.MEASURED,
                                Map.of())));
        ordinal = 0;
        return session;
    }

    public Rigged trim(SettingDef setting, double si) {
        return trim(Map.of(setting.id(), Setting.of(si)), null);
    }

    public Rigged trim(Map<String, Setting> values, @Nullable String trialId) {
        return book.riggings().trim(model.id(), values, "trim", trialId);
    }

    public Trial openTrial(SettingDef setting) {
        return book.logbook()
                .enter(
                        "trial",
                        w -> w.insert(new Trial(
                                Logbook.newId(),
                                model.id(),
                                setting.id(),
                                0.149,
                                null,
                                0.143,
                                null,
                                2,
                                1,
                                "ABBA",
                                Instant.parse("2026-01-20T20:00:00Z"),
                                null,
                                null)));
    }

    /** All trials of the model. */
    public List<Trial> trials() {
        return book.logbook().read(r -> r.where(Trial.class, "modelId", model.id()));
    }

    /** A flight on the rigging of now with 1400 turns. */
    public Flight fly(double seconds) {
        return fly(seconds, Ending.CLEAN, null, "", 1400);
    }

    public Flight fly(double seconds, Ending ending, @Nullable CutShort cutShort, String notes, double turns) {
        return fly(seconds, ending, cutShort, notes, turns, null);
    }

    public Flight fly(
            double seconds,
            Ending ending,
            @Nullable CutShort cutShort,
            String notes,
            double turns,
            @Nullable Recovered recovered) {
        String rigging = Objects.requireNonNull(book.riggings().now(model.id()).rigging())
                .id();
        Instant launched =
                session.localDate().atTime(19, 0).toInstant(ZoneOffset.UTC).plusSeconds(900L * ++ordinal);
        return book.logbook().enter("flight", w -> {
            Wind wind = w.insert(new Wind(
                    Logbook.newId(),
                    motor.id(),
                    session.id(),
                    ++winds,
                    null,
                    turns,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    Map.of()));
            return w.insert(new Flight(
                    Logbook.newId(),
                    session.id(),
                    rigging,
                    wind.id(),
                    ordinal,
                    1,
                    launched,
                    null,
                    seconds,
                    DurationSource.TYPED,
                    null,
                    ending,
                    cutShort,
                    null,
                    null,
                    100.0,
                    1,
                    recovered,
                    null,
                    null,
                    null,
                    null,
                    null,
                    notes.isEmpty() ? null : notes,
                    Map.of()));
        });
    }

    /** A flight of which nothing but the time is known. */
    public Flight flyWithoutWind(double seconds) {
        Flight flight = fly(seconds);
        return book.logbook()
                .enter(
                        "no wind",
                        w -> w.update(FlightDraft.of(flight)
                                .windId(null)
                                .turnsLeft(null)
                                .done()));
    }

    /** Today's evening is in a hall with lamps at this height. */
    public void venue(double lampsM) {
        book.logbook().enter("venue", w -> {
            Venue venue =
                    w.insert(new Venue(Logbook.newId(), "Saltmarsh Sports Hall", null, null, 9.4, null, Map.of()));
            w.insert(new VenueMark(Logbook.newId(), venue.id(), "lamps", lampsM, true, Map.of()));
            session = w.update(new Session(session.id(), venue.id(), session.localDate(), session.zone(), null, null));
            return venue;
        });
    }

    /** A flight with its launch torque, N m, and the height it reached, m: read, or touched at the lamps. */
    public Flight flyHigh(double seconds, double torqueNm, double peakM, boolean touchedLamps) {
        Flight flight = fly(seconds, touchedLamps ? Ending.TOUCHED : Ending.CLEAN, null, "", 1400);
        return book.logbook().enter("height", w -> {
            String windId = Objects.requireNonNull(flight.windId());
            w.update(WindDraft.of(w.get(Wind.class, windId))
                    .launchTorqueNm(torqueNm)
                    .done());
            if (touchedLamps) {
                VenueMark lamps =
                        w.where(VenueMark.class, "venueId", session.venueId()).get(0);
                w.insert(new FlightEvent(
                        Logbook.newId(),
                        flight.id(),
                        FlightEventKind.TOUCHED,
                        100.0,
                        lamps.heightM(),
                        lamps.id(),
                        "lamps"));
                return flight;
            }
            return w.update(
                    FlightDraft.of(flight).peakLowM(peakM).peakHighM(peakM).done());
        });
    }

    @Override
    public void close() {
        book.close();
    }
}
