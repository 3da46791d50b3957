package org.rafterbook.work;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.SideRows.EventRow;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.VenueMark;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Writer;

/** What happened in the flights of an import; each row finds its flight by its launch or its number in the session. */
final class ImportEvents {

    private final Writer w;
    private final ImportTally tally;
    private final ImportBasics basics;
    private final ImportSessions sessions;
    private final Map<String, List<FlightLine>> flights = new HashMap<>();
    private final Map<String, List<FlightEvent>> unmatched = new HashMap<>();

    ImportEvents(Writer writer, ImportTally tally, ImportBasics basics, ImportSessions sessions) {
        this.w = writer;
        this.tally = tally;
        this.basics = basics;
        this.sessions = sessions;
    }

    void take(ImportPlan plan) {
        plan.events.forEach(this::take);
    }

    private void take(ImportPlan.Placed<EventRow> placed) {
        EventRow row = placed.row();
        FlightLine line = flight(row);
        if (line == null) {
            tally.problem(
                    placed.file(),
                    row.line(),
                    null,
                    "there is no such flight of " + row.model() + " on " + row.date()
                            + "; it is found by launched_at or by flight_no.");
            return;
        }
        String markName = row.mark();
        VenueMark mark = markName == null ? null : basics.mark(line.session().venueId(), markName);
        if (markName != null && mark == null) {
            tally.problem(placed.file(), row.line(), "mark", "there is no mark '" + markName + "' at this venue.");
            return;
        }
        FlightEvent event = new FlightEvent(
                Logbook.newId(),
                line.flight().id(),
                row.kind(),
                row.atS(),
                row.value(),
                mark == null ? null : mark.id(),
                row.notes());
        if (!isThere(event)) {
            w.insert(event);
            tally.add("events");
        }
    }

    private boolean isThere(FlightEvent event) {
        List<FlightEvent> known = unmatched.computeIfAbsent(
                event.flightId(), id -> new ArrayList<>(w.where(FlightEvent.class, "flightId", id)));
        for (FlightEvent other : known) {
            if (other.kind() == event.kind()
                    && Objects.equals(other.atS(), event.atS())
                    && Objects.equals(other.value(), event.value())
                    && Objects.equals(other.markId(), event.markId())
                    && Objects.equals(other.notes(), event.notes())) {
                known.remove(other);
                return true;
            }
        }
        return false;
    }

    private @Nullable FlightLine flight(EventRow row) {
        Session session = sessions.find(row.date(), row.venue());
        if (session == null) {
            return null;
        }
        String model = row.model() == null ? "" : ImportBasics.key(row.model());
        List<FlightLine> ofModel = flights
                .computeIfAbsent(session.id(), id -> w.flights().ofSession(id))
                .stream()
                .filter(l ->
                        (l.model() == null ? "" : ImportBasics.key(l.model().name())).equals(model))
                .toList();
        Instant at = ImportSessions.instant(session, row.launchedAt());
        if (at != null) {
            return ofModel.stream()
                    .filter(l -> at.equals(l.flight().launchedAt()))
                    .findFirst()
                    .orElse(null);
        }
        Integer number = row.flightNo();
        return number == null || number > ofModel.size() ? null : ofModel.get(number - 1);
    }
}
