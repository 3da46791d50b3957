package org.rafterbook.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.MoistAir;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Reader;
import org.rafterbook.units.UserError;

/** Reads a session with all that the Hall shows of it. */
final class EveningReading {

    private final Reader reader;
    private final MarginText margins;

    EveningReading(Reader reader, MarginText margins) {
        this.reader = reader;
        this.margins = margins;
    }

    /** The evening; before its first entry one without a session. */
    Evening of(@Nullable Session session) {
        List<FlightLine> flights =
                session == null ? List.of() : reader.flights().ofSession(session.id());
        List<FlightLine> inTheAir = reader.flights().inTheAir();
        String venueId = session == null ? null : session.venueId();
        Venue venue = venueId == null ? null : reader.find(Venue.class, venueId);
        AirReading air = session == null ? null : newestAir(session);
        return new Evening(
                session,
                venue,
                Heights.of(reader, session, venue),
                air,
                density(air),
                flights,
                FlightOutcomes.of(
                        reader,
                        Stream.concat(flights.stream(), inTheAir.stream()).toList()),
                margins(flights),
                inTheAir);
    }

    private @Nullable AirReading newestAir(Session session) {
        List<AirReading> air = reader.flights().airOf(List.of(session.id()));
        return air.isEmpty() ? null : air.get(air.size() - 1);
    }

    /** Density of a reading, kg/m3; null where one of its three values is missing. */
    private static @Nullable Double density(@Nullable AirReading air) {
        Double temperature = air == null ? null : air.temperatureK();
        Double pressure = air == null ? null : air.pressurePa();
        Double humidity = air == null ? null : air.humidity();
        if (temperature == null || pressure == null || humidity == null) {
            return null;
        }
        try {
            return MoistAir.densityKgPerM3(temperature, pressure, humidity);
        } catch (UserError outside) {
            return null; // the reading stands as typed, only the formula does not reach there
        }
    }

    private Map<String, MarginText.Answer> margins(List<FlightLine> flights) {
        Map<String, Rigged> rigged = new HashMap<>();
        Map<String, MarginText.Answer> answers = new HashMap<>();
        for (FlightLine line : flights) {
            Version version = line.version();
            Model model = line.model();
            if (version != null && model != null) {
                Rigged as = rigged.computeIfAbsent(
                        version.id(), id -> Riggings.rigged(reader, model, line.rigging(), version));
                answers.put(line.flight().id(), margins.of(as, line.motor()));
            }
        }
        return answers;
    }
}
