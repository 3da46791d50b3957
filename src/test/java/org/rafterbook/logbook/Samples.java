package org.rafterbook.logbook;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;

/** Records to enter in tests, with little filled in. */
final class Samples {

    static final Instant EVENING = Instant.parse("2026-01-20T18:30:00.123Z");
    static final LocalDate DAY = LocalDate.of(2026, 1, 20);

    private Samples() {}

    /** Answers a question about many, for assertions that cannot tell its type by themselves. */
    static <T> List<T> list(Logbook logbook, Query<List<T>> query) {
        return logbook.read(query);
    }

    static Model model(String name) {
        return new Model(Logbook.newId(), name, "t", 1, null, null, null, null);
    }

    static Version version(Model model, int number) {
        return new Version(
                Logbook.newId(),
                model.id(),
                1,
                number,
                model.id() + number,
                null,
                false,
                null,
                null,
                null,
                false,
                EVENING);
    }

    static Rigging rigging(Version version, int ordinal, @Nullable Rigging previous) {
        return new Rigging(
                Logbook.newId(),
                version.modelId(),
                ordinal,
                version.id(),
                previous == null ? null : previous.id(),
                EVENING.plusSeconds(60L * ordinal),
                null,
                null);
    }

    static Venue venue(String name) {
        return new Venue(Logbook.newId(), name, null, null, null, null, Map.of());
    }

    static Session session(@Nullable Venue venue, LocalDate date) {
        return new Session(
                Logbook.newId(), venue == null ? null : venue.id(), date, ZoneId.of("Europe/London"), null, null);
    }

    static Motor motor(String name) {
        return new Motor(Logbook.newId(), name, null, 0.5, 0.0016, null, 1, DAY, null, null, Map.of());
    }

    static Wind wind(Motor motor, Session session, int ordinal, @Nullable Double wound, @Nullable Double backedOff) {
        return new Wind(
                Logbook.newId(),
                motor.id(),
                session.id(),
                ordinal,
                EVENING,
                wound,
                backedOff,
                null,
                null,
                null,
                null,
                null,
                Map.of());
    }

    static Flight flight(Session session, int ordinal, @Nullable Double durationS) {
        return flight(session, null, null, ordinal, durationS, null, null);
    }

    static Flight flight(
            Session session,
            @Nullable Rigging rigging,
            @Nullable Wind wind,
            int ordinal,
            @Nullable Double durationS,
            @Nullable Double turnsLeft,
            @Nullable String notes) {
        return new Flight(
                Logbook.newId(),
                session.id(),
                rigging == null ? null : rigging.id(),
                wind == null ? null : wind.id(),
                ordinal,
                1,
                EVENING.plusSeconds(900L * ordinal),
                null,
                durationS,
                durationS == null ? null : DurationSource.TYPED,
                null,
                null,
                null,
                null,
                null,
                turnsLeft,
                1,
                null,
                null,
                null,
                null,
                null,
                null,
                notes,
                Map.of());
    }
}
