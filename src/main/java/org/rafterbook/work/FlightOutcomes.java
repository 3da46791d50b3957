package org.rafterbook.work;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Reader;
import org.rafterbook.review.Outcome;

/**
 * How the times of flights are taken, the same wherever they are told: with what was noted during each, and with what the
 * flyer has said of flags that came after the time was known.
 *
 * @param events keyed by flight id
 * @param lateFlags ids of models of which flights flagged after their time was known are left out too
 */
public record FlightOutcomes(Map<String, List<FlightEvent>> events, Set<String> lateFlags) {

    /** Those of these flights. */
    static FlightOutcomes of(Reader reader, Collection<FlightLine> lines) {
        return new FlightOutcomes(
                events(reader, lines.stream().map(l -> l.flight().id()).toList()),
                lines.stream()
                        .map(FlightLine::model)
                        .filter(Objects::nonNull)
                        .map(Model::id)
                        .distinct()
                        .filter(id -> ReviewDesk.lateFlags(reader, id))
                        .collect(Collectors.toSet()));
    }

    /** What was noted during these flights, keyed by flight id. */
    static Map<String, List<FlightEvent>> events(Reader reader, Collection<String> flightIds) {
        return reader.whereIn(FlightEvent.class, "flightId", flightIds).stream()
                .collect(Collectors.groupingBy(FlightEvent::flightId));
    }

    /** What was noted during a flight. */
    public List<FlightEvent> eventsOf(String flightId) {
        return events.getOrDefault(flightId, List.of());
    }

    /** How the time of a flight is taken. */
    public Outcome of(FlightLine line) {
        return of(line.flight(), line.model());
    }

    /** How the time of a flight of this model, null for none, is taken. */
    Outcome of(Flight flight, @Nullable Model model) {
        return FlightReading.outcome(flight, eventsOf(flight.id()), model != null && lateFlags.contains(model.id()));
    }
}
