package org.rafterbook.work;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.exchange.SideRows.AirRow;
import org.rafterbook.exchange.SideRows.LimitRow;
import org.rafterbook.exchange.SideRows.SessionRow;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.PressureSource;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.SessionLimit;
import org.rafterbook.flight.Venue;
import org.rafterbook.flight.VenueMark;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Writer;

/** Sessions of an import, one a day and venue, with their air and what hung in the way. */
final class ImportSessions {

    /** Name of the limit that stands for a usable height other than the venue's own. */
    static final String USABLE = "usable height";

    private record Key(LocalDate date, @Nullable String venueId) {}

    private record Sample(
            @Nullable Double temperatureK,
            @Nullable Double humidity,
            @Nullable Double pressurePa) {}

    private final Writer w;
    private final ImportTally tally;
    private final ImportBasics basics;
    private final ZoneId ownZone;
    private final Map<Key, Session> sessions = new HashMap<>();
    private final Map<Key, ZoneId> zones = new HashMap<>();
    private final Map<String, List<AirReading>> air = new HashMap<>();
    private final Map<String, List<SessionLimit>> limits = new HashMap<>();
    private final Set<String> airFromFile = new HashSet<>();
    /** When the last flight of this import with air of its own was launched, by session. */
    private final Map<String, Instant> airHeldUntil = new HashMap<>();

    ImportSessions(Writer writer, ImportTally tally, ImportBasics basics, ZoneId ownZone) {
        this.w = writer;
        this.tally = tally;
        this.basics = basics;
        this.ownZone = ownZone;
        w.all(Session.class).forEach(s -> sessions.putIfAbsent(new Key(s.localDate(), s.venueId()), s));
    }

    /** Reads the zones first: they say when a local time was. */
    void takeZones(ImportPlan plan) {
        for (ImportPlan.Placed<SessionRow> placed : plan.sessions) {
            String zone = placed.row().zone();
            if (zone != null) {
                try {
                    zones.put(key(placed.row().date(), placed.row().venue()), ZoneId.of(zone));
                } catch (DateTimeException e) {
                    tally.problem(
                            placed.file(), placed.row().line(), "zone", "'" + zone + "' is no time zone known here.");
                }
            }
        }
    }

    private Key key(LocalDate date, @Nullable String venue) {
        Venue known = basics.venue(venue, null);
        return new Key(date, known == null ? null : known.id());
    }

    /** The session of that day and venue, made where there is none. */
    Session at(LocalDate date, @Nullable String venue) {
        Key key = key(date, venue);
        Session known = sessions.get(key);
        if (known != null) {
            return known;
        }
        tally.add("sessions");
        Session made = w.insert(
                new Session(Logbook.newId(), key.venueId(), date, zones.getOrDefault(key, ownZone), null, null));
        sessions.put(key, made);
        return made;
    }

    /** The session of that day and venue, null where there is none. */
    @Nullable
    Session find(LocalDate date, @Nullable String venue) {
        return sessions.get(key(date, venue));
    }

    /** The instant of a local moment in the session. */
    static @Nullable Instant instant(Session session, @Nullable LocalDateTime at) {
        return at == null ? null : at.atZone(session.zone()).toInstant().truncatedTo(ChronoUnit.MILLIS);
    }

    void take(ImportPlan plan) {
        for (ImportPlan.Placed<SessionRow> placed : plan.sessions) {
            SessionRow row = placed.row();
            Session s = at(row.date(), row.venue());
            String what = "session of " + row.date();
            Session filled = new Session(
                    s.id(),
                    s.venueId(),
                    s.localDate(),
                    s.zone(),
                    basics.keep(what + ", goal", s.goal(), row.goal()),
                    basics.keep(what + ", notes", s.notes(), row.notes()));
            sessions.put(new Key(s.localDate(), s.venueId()), w.update(filled));
        }
        for (ImportPlan.Placed<AirRow> placed : plan.air) {
            AirRow row = placed.row();
            Session session = at(row.date(), row.venue());
            airFromFile.add(session.id());
            PressureSource source =
                    row.pressurePa() == null ? null : Objects.requireNonNullElse(row.source(), PressureSource.MEASURED);
            addAir(
                    session,
                    instant(session, row.at()),
                    new Sample(row.temperatureK(), row.humidity(), row.pressurePa()),
                    source);
        }
        for (ImportPlan.Placed<LimitRow> placed : plan.limits) {
            LimitRow row = placed.row();
            Session session = at(row.date(), row.venue());
            String markName = row.mark();
            VenueMark mark = markName == null ? null : basics.mark(session.venueId(), markName);
            addLimit(session, row.name(), row.heightM(), mark == null ? null : mark.id());
        }
    }

    private void addLimit(Session session, String name, double heightM, @Nullable String markId) {
        List<SessionLimit> known = limits.computeIfAbsent(
                session.id(), id -> new ArrayList<>(w.where(SessionLimit.class, "sessionId", id)));
        if (known.stream().noneMatch(l -> l.name().equalsIgnoreCase(name) && l.heightM() == heightM)) {
            known.add(w.insert(new SessionLimit(Logbook.newId(), session.id(), markId, name, heightM)));
        }
    }

    /** The height that could be used: the venue's own unless another is given for a flight. */
    void ceiling(Session session, @Nullable Venue venue, @Nullable Double heightM) {
        if (heightM != null && (venue == null || !heightM.equals(venue.usableHeightM()))) {
            addLimit(session, USABLE, heightM, null);
        }
    }

    /** The air at a flight, written down where it is another than that read last. */
    void air(Session session, @Nullable Instant at, FlightRow.Air given) {
        if (given.isEmpty() || airFromFile.contains(session.id())) {
            return;
        }
        Sample sample = new Sample(given.temperatureK(), given.humidity(), given.pressurePa());
        AirReading last = null;
        for (AirReading reading : readings(session)) {
            if (at == null) {
                if (sample.equals(sample(reading))) {
                    return;
                }
            } else if (reading.at() == null || !reading.at().isAfter(at)) {
                last = reading;
            }
        }
        Instant until = airHeldUntil.get(session.id());
        if (last == null || !sample.equals(sample(last))) {
            Instant since = last == null ? null : last.at();
            if (last != null && since != null && until != null && until.isAfter(since) && isNearer(at, until, since)) {
                // the reading nearest to a flight must be its own: its air is noted again
                addAir(session, until, sample(last), last.pressureSource());
            }
            addAir(session, at, sample, given.pressurePa() == null ? null : PressureSource.MEASURED);
        }
        if (at != null) {
            airHeldUntil.put(session.id(), at);
        }
    }

    /** True where a flight is nearer to the new air than to where its own was noted. */
    private static boolean isNearer(@Nullable Instant toNew, Instant flight, Instant toOwn) {
        return toNew != null && Duration.between(flight, toNew).compareTo(Duration.between(toOwn, flight)) < 0;
    }

    private static Sample sample(AirReading reading) {
        return new Sample(reading.temperatureK(), reading.humidity(), reading.pressurePa());
    }

    private List<AirReading> readings(Session session) {
        return air.computeIfAbsent(
                session.id(), id -> new ArrayList<>(w.flights().airOf(List.of(id))));
    }

    private void addAir(Session session, @Nullable Instant at, Sample sample, @Nullable PressureSource source) {
        List<AirReading> known = readings(session);
        if (known.stream().anyMatch(r -> Objects.equals(r.at(), at) && sample.equals(sample(r)))) {
            return;
        }
        AirReading made = w.insert(new AirReading(
                Logbook.newId(),
                session.id(),
                at,
                sample.temperatureK(),
                sample.humidity(),
                sample.pressurePa(),
                source,
                Map.of()));
        int place = 0;
        while (place < known.size() && !isAfter(known.get(place), at)) {
            place++;
        }
        known.add(place, made);
        tally.add("air readings");
    }

    private static boolean isAfter(AirReading reading, @Nullable Instant at) {
        return at != null && reading.at() != null && reading.at().isAfter(at);
    }
}
