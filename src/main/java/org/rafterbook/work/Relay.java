package org.rafterbook.work;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightDraft;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.UserError;

/**
 * Lays a rigging anew when some of its flights were flown on other settings: riggings begin where the settings change in
 * flying order, and a neighbour that has the settings already takes the flights.
 */
final class Relay {

    private final Writer w;
    private final Clock clock;

    Relay(Writer w, Clock clock) {
        this.w = w;
        this.clock = clock;
    }

    void lay(Rigging source, Set<String> moved, Map<String, Setting> changed) {
        Model model = w.get(Model.class, source.modelId());
        VersionBook versions = new VersionBook(w, model, clock);
        Version was = w.get(Version.class, source.versionId());
        Map<String, Setting> values = new HashMap<>(versions.valuesOf(was));
        values.putAll(changed);
        Version now = versions.findOrMake(w, values, Geometry.of(was), false);
        if (now.id().equals(was.id())) {
            throw UserError.badInput("Those are the settings these flights have already.");
        }
        List<Rigging> strip = new ArrayList<>(Riggings.ordered(w, model.id()));
        int at = strip.indexOf(source);
        Rigging before = at > 0 ? strip.get(at - 1) : null;
        Rigging after = at + 1 < strip.size() ? strip.get(at + 1) : null;
        List<List<Flight>> runs = runs(inOrder(w, source.id()), moved);
        List<Rigging> laid = new ArrayList<>();
        boolean sourceUsed = false;
        for (int i = 0; i < runs.size(); i++) {
            List<Flight> run = runs.get(i);
            boolean isMoved = moved.contains(run.get(0).id());
            Rigging home;
            if (!isMoved && !sourceUsed) {
                home = source;
                sourceUsed = true;
                laid.add(home);
            } else if (isMoved && i == 0 && before != null && before.versionId().equals(now.id())) {
                home = before;
            } else if (isMoved
                    && i == runs.size() - 1
                    && after != null
                    && after.versionId().equals(now.id())) {
                home = after;
            } else {
                home = w.insert(new Rigging(
                        Logbook.newId(),
                        model.id(),
                        source.ordinal(),
                        isMoved ? now.id() : was.id(),
                        null,
                        run.get(0).launchedAt(),
                        "correction",
                        source.trialId()));
                laid.add(home);
            }
            for (Flight flight : run) {
                w.update(FlightDraft.of(flight).riggingId(home.id()).done());
            }
        }
        if (!sourceUsed) {
            w.remove(Rigging.class, source.id());
        }
        strip.remove(source);
        strip.addAll(at, laid);
        Corrections.renumber(w, strip);
        if (!sourceUsed) {
            Riggings.forgetIfUnused(w, was.id());
        }
    }

    /** Flights of one rigging in flying order. */
    private static List<Flight> inOrder(Reader reader, String riggingId) {
        Map<String, Session> sessions = new HashMap<>();
        List<Flight> flights = new ArrayList<>(reader.where(Flight.class, "riggingId", riggingId));
        flights.forEach(f -> sessions.computeIfAbsent(f.sessionId(), id -> reader.get(Session.class, id)));
        flights.sort(Comparator.comparing((Flight f) -> {
                    Session session = sessions.get(f.sessionId());
                    return session == null ? "" : session.localDate().toString();
                })
                .thenComparingInt(Flight::ordinal));
        return flights;
    }

    private static List<List<Flight>> runs(List<Flight> flights, Set<String> moved) {
        List<List<Flight>> runs = new ArrayList<>();
        for (Flight flight : flights) {
            List<Flight> last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last != null && moved.contains(last.get(0).id()) == moved.contains(flight.id())) {
                last.add(flight);
            } else {
                runs.add(new ArrayList<>(List.of(flight)));
            }
        }
        return runs;
    }
}
