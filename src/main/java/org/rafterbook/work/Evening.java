package org.rafterbook.work;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.review.Outcome;

/**
 * Today's session with all that the Hall shows of it.
 *
 * @param session null before the first entry of the day
 * @param heights marks of the venue and what hangs in the way tonight, lowest first
 * @param air the newest reading, null before the first
 * @param densityKgPerM3 density of that air, null where something is missing for it
 * @param flights in flying order
 * @param outcomes of these flights and those in the air
 * @param margins keyed by flight id
 * @param inTheAir flights being timed, of this session or left from one before
 */
public record Evening(
        @Nullable Session session,
        @Nullable Venue venue,
        List<HeightMark> heights,
        @Nullable AirReading air,
        @Nullable Double densityKgPerM3,
        List<FlightLine> flights,
        FlightOutcomes outcomes,
        Map<String, MarginText.Answer> margins,
        List<FlightLine> inTheAir) {

    public List<FlightEvent> eventsOf(String flightId) {
        return outcomes.eventsOf(flightId);
    }

    /** The flight with its surroundings, null where it is neither of this session nor in the air. */
    public @Nullable FlightLine find(String flightId) {
        for (List<FlightLine> lines : List.of(flights, inTheAir)) {
            for (FlightLine line : lines) {
                if (line.flight().id().equals(flightId)) {
                    return line;
                }
            }
        }
        return null;
    }

    /** How the time of a flight counts. */
    public Outcome outcome(Flight flight) {
        FlightLine line = find(flight.id());
        return outcomes.of(flight, line == null ? null : line.model());
    }
}
