package org.rafterbook.work;

import java.time.Clock;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.PressureSource;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.SessionLimit;
import org.rafterbook.flight.StandardAtmosphere;
import org.rafterbook.flight.Venue;
import org.rafterbook.flight.VenueMark;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.UserError;

/** Where today's session is, what hangs there and how the air is. */
public final class Visit {

    private final Logbook logbook;
    private final Clock clock;

    Visit(Logbook logbook, Clock clock) {
        this.logbook = logbook;
        this.clock = clock;
    }

    /** Every venue, by name. */
    public List<Venue> venues() {
        return logbook.read(r -> r.all(Venue.class).stream()
                .sorted(Comparator.comparing(Venue::name, String.CASE_INSENSITIVE_ORDER))
                .toList());
    }

    /** Today's session is there. */
    public Session at(String venueId) {
        return logbook.enter("venue", w -> {
            Session s = Sessions.todayOrBegin(w, clock);
            return w.update(new Session(
                    s.id(), w.get(Venue.class, venueId).id(), s.localDate(), s.zone(), s.goal(), s.notes()));
        });
    }

    /**
     * Adds a venue, and today's session is there.
     *
     * @param usableHeight height that can be flown under, null where not known
     * @param siteHeight height above the sea, from which the air pressure is estimated, null where not known
     */
    public Venue add(String name, @Nullable TypedValue usableHeight, @Nullable TypedValue siteHeight) {
        String trimmed = name.strip();
        if (trimmed.isEmpty()) {
            throw UserError.badInput("A venue needs a name.");
        }
        return logbook.enter("venue " + trimmed, w -> {
            if (w.all(Venue.class).stream().anyMatch(v -> v.name().equalsIgnoreCase(trimmed))) {
                throw UserError.badInput("There is a venue named '" + trimmed + "' already.");
            }
            Map<String, String> asTyped = new HashMap<>();
            put(asTyped, "usableHeightM", usableHeight);
            put(asTyped, "siteHeightM", siteHeight);
            Venue venue = w.insert(
                    new Venue(Logbook.newId(), trimmed, si(siteHeight), null, si(usableHeight), null, asTyped));
            Session s = Sessions.todayOrBegin(w, clock);
            w.update(new Session(s.id(), venue.id(), s.localDate(), s.zone(), s.goal(), s.notes()));
            return venue;
        });
    }

    /** Adds a thing at a known height to the venue. */
    public VenueMark addMark(String venueId, String name, TypedValue height, boolean limit) {
        if (name.isBlank()) {
            throw UserError.badInput("A mark needs a name, such as lamp.");
        }
        return logbook.enter(
                "mark " + name.strip(),
                w -> w.insert(new VenueMark(
                        Logbook.newId(),
                        w.get(Venue.class, venueId).id(),
                        name.strip(),
                        height.si(),
                        limit,
                        Map.of("heightM", height.asTyped()))));
    }

    /** Adds what hangs in the way on this evening only. */
    public SessionLimit addLimit(String name, TypedValue height) {
        if (name.isBlank()) {
            throw UserError.badInput("Say what hangs in the way.");
        }
        return logbook.enter(
                "in the way: " + name.strip(),
                w -> w.insert(new SessionLimit(
                        Logbook.newId(), Sessions.todayOrBegin(w, clock).id(), null, name.strip(), height.si())));
    }

    /**
     * Writes down how the air is now.
     *
     * @param pressure station pressure as measured; without it the venue's height above the sea gives an estimate
     */
    public AirReading air(
            @Nullable TypedValue temperature, @Nullable TypedValue humidity, @Nullable TypedValue pressure) {
        if (temperature == null && humidity == null && pressure == null) {
            throw UserError.badInput("Type the temperature, the humidity or the pressure.");
        }
        return logbook.enter("air", w -> {
            Session session = Sessions.todayOrBegin(w, clock);
            Double pressurePa = pressure == null ? fromHeight(w, session) : Double.valueOf(pressure.si());
            Map<String, String> asTyped = new HashMap<>();
            put(asTyped, "temperatureK", temperature);
            put(asTyped, "humidity", humidity);
            put(asTyped, "pressurePa", pressure);
            return w.insert(new AirReading(
                    Logbook.newId(),
                    session.id(),
                    clock.instant(),
                    si(temperature),
                    si(humidity),
                    pressurePa,
                    pressurePa == null ? null : pressure == null ? PressureSource.FROM_HEIGHT : PressureSource.MEASURED,
                    asTyped));
        });
    }

    private static @Nullable Double fromHeight(Reader reader, Session session) {
        String venueId = session.venueId();
        Venue venue = venueId == null ? null : reader.find(Venue.class, venueId);
        Double height = venue == null ? null : venue.siteHeightM();
        return height == null ? null : Double.valueOf(StandardAtmosphere.pressurePa(height));
    }

    private static @Nullable Double si(@Nullable TypedValue value) {
        return value == null ? null : Double.valueOf(value.si());
    }

    private static void put(Map<String, String> asTyped, String what, @Nullable TypedValue value) {
        if (value != null) {
            asTyped.put(what, value.asTyped());
        }
    }
}
