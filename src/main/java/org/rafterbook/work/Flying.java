package org.rafterbook.work;

import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightDraft;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.Recovered;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindDraft;
import org.rafterbook.power.WindEnd;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.UserError;

/** From letting go to landing. A flight's row is written at launch and updated at landing. */
public final class Flying {

    private final Logbook logbook;
    private final Trials trials;
    private final Clock clock;

    Flying(Logbook logbook, Trials trials, Clock clock) {
        this.logbook = logbook;
        this.trials = trials;
        this.clock = clock;
    }

    /** Writes the flight down as being in the air. */
    public Flight launch(Launch launch) {
        if (launch.at() == null) {
            throw UserError.badInput("A launch without its moment needs a time aloft.");
        }
        return logbook.enter("launch" + of(launch), w -> w.insert(begun(w, launch)));
    }

    /** Writes a whole flight down whose time comes from somebody's watch. */
    public Flight typed(Launch launch, TypedValue time) {
        checkTime(time.si());
        return logbook.enter("flight of " + time.readBack(), w -> {
            Map<String, String> asTyped = new HashMap<>();
            asTyped.put("durationS", time.asTyped());
            return w.insert(FlightDraft.of(begun(w, launch))
                    .durationS(time.si())
                    .durationSource(DurationSource.TYPED)
                    .asTyped(asTyped)
                    .done());
        });
    }

    private String of(Launch launch) {
        String id = launch.modelId();
        return id == null
                ? ""
                : " of " + logbook.read(r -> r.get(Model.class, id).name());
    }

    private Flight begun(Writer writer, Launch launch) {
        Session session = Sessions.todayOrBegin(writer, clock);
        int ordinal = writer.where(Flight.class, "sessionId", session.id()).stream()
                        .mapToInt(Flight::ordinal)
                        .max()
                        .orElse(0)
                + 1;
        String modelId = launch.modelId();
        Rigging rigging = modelId == null ? null : trials.ofLaunch(writer, modelId);
        String windId = launch.windId();
        boolean flagged = launch.leftOutWhy() != null;
        return new Flight(
                launch.flightId(),
                session.id(),
                rigging == null ? null : rigging.id(),
                windId,
                ordinal,
                windId == null ? 1 : flyOff(writer, windId),
                launch.at(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                windId == null ? 1 : fraction(writer, windId),
                null,
                null,
                launch.leftOutWhy(),
                flagged ? FlyerName.of(writer) : null,
                flagged ? clock.instant() : null,
                flagged ? Boolean.TRUE : null,
                null,
                Map.of());
    }

    /** Says the wind has flown and which launch of it this one is. */
    private static int flyOff(Writer writer, String windId) {
        Wind wind = writer.get(Wind.class, windId);
        if (wind.end() == null) {
            writer.update(WindDraft.of(wind).end(WindEnd.FLOWN).done());
        }
        return writer.where(Flight.class, "windId", windId).stream()
                        .mapToInt(Flight::launchNoOfWind)
                        .max()
                        .orElse(0)
                + 1;
    }

    private static double fraction(Reader reader, String windId) {
        String motorId = reader.get(Wind.class, windId).motorId();
        Motor motor = motorId == null ? null : reader.find(Motor.class, motorId);
        return motor == null ? 1 : motor.fraction();
    }

    /**
     * Writes the time down.
     *
     * @param unwritten the launch, where writing it down failed; it is made good here
     */
    public Flight land(String flightId, Watch.Stop stop, @Nullable Launch unwritten) {
        return logbook.enter("landing after " + ClockTime.minutesSeconds(stop.durationS()), w -> {
            return w.update(FlightDraft.of(written(w, flightId, unwritten))
                    .durationS(stop.durationS())
                    .durationSource(stop.source())
                    .landedAt(stop.at())
                    .clockDoubtS(stop.doubtS())
                    .done());
        });
    }

    private Flight written(Writer writer, String flightId, @Nullable Launch unwritten) {
        Flight flight = writer.find(Flight.class, flightId);
        if (flight == null && unwritten != null) {
            flight = writer.insert(begun(writer, unwritten));
        }
        if (flight == null) {
            throw UserError.couldNot("This flight has been taken back.", null);
        }
        return flight;
    }

    /** Takes a wrong stop back: the flight is in the air again, timed from its launch as before. */
    public Flight stillFlying(String flightId) {
        return logbook.enter("still flying", w -> {
            Flight flight = w.get(Flight.class, flightId);
            if (flight.launchedAt() == null) {
                throw UserError.badInput("This time was typed; there is no watch to run on.");
            }
            LandingAnswers.forget(w, flightId);
            boolean aborted = LandingAnswers.ABORTED_LAUNCH.equals(flight.leftOutWhy());
            return w.update((aborted ? LandingAnswers.unflagged(flight) : FlightDraft.of(flight))
                    .durationS(null)
                    .durationSource(null)
                    .landedAt(null)
                    .clockDoubtS(null)
                    .ending(null)
                    .cutShort(null)
                    .done());
        });
    }

    /**
     * The model was not let go, or came back at once: no time, kept as aborted.
     *
     * @param unwritten the launch, where writing it down failed; it is made good here
     */
    public Flight didNotLaunch(String flightId, @Nullable Launch unwritten) {
        return logbook.enter(
                "did not launch",
                w -> w.update(FlightDraft.of(written(w, flightId, unwritten))
                        .ending(Ending.ABORTED)
                        .done()));
    }

    /**
     * Puts a typed time in the place of the one kept, or ends a flight in the air with it.
     *
     * @param unwritten the launch, where writing it down failed; it is made good here
     */
    public Flight correctTime(String flightId, TypedValue time, @Nullable Launch unwritten) {
        checkTime(time.si());
        return logbook.enter("time " + time.readBack(), w -> {
            Flight flight = written(w, flightId, unwritten);
            Map<String, String> asTyped = new HashMap<>(flight.asTyped());
            asTyped.put("durationS", time.asTyped());
            Instant launched = flight.launchedAt();
            return w.update(FlightDraft.of(flight)
                    .durationS(time.si())
                    .durationSource(DurationSource.TYPED)
                    .clockDoubtS(null)
                    .landedAt(launched == null ? null : launched.plusMillis(Math.round(time.si() * 1000)))
                    .asTyped(asTyped)
                    .done());
        });
    }

    private static void checkTime(double seconds) {
        if (!(seconds > 0) || seconds >= 86_400) {
            throw UserError.badInput("A flight lasts longer than 0 s and less than a day.");
        }
    }

    /**
     * Notes what it does at a second of the flight. Counts of stalls, the recovery and the least peak height follow.
     *
     * @param atS second of the flight, null where only that it happened is known
     * @param at the mark touched or passed
     * @param value lap time, s, or what else the kind measures
     */
    public FlightEvent note(
            String flightId,
            FlightEventKind kind,
            @Nullable Double atS,
            @Nullable HeightMark at,
            @Nullable Double value,
            @Nullable String text) {
        return logbook.enter(words(kind, at), w -> {
            Flight flight = w.get(Flight.class, flightId);
            FlightEvent event = w.insert(new FlightEvent(
                    Logbook.newId(),
                    flightId,
                    kind,
                    atS,
                    at == null ? value : Double.valueOf(at.heightM()),
                    at == null ? null : at.markId(),
                    text == null && at != null ? at.name() : text));
            w.update(follow(w, flight, kind, at));
            return event;
        });
    }

    private static Flight follow(Reader reader, Flight flight, FlightEventKind kind, @Nullable HeightMark at) {
        FlightDraft draft = FlightDraft.of(flight);
        switch (kind) {
            case STALLED -> draft.stalls((int) eventsOf(reader, flight.id(), FlightEventKind.STALLED));
            case RECOVERED -> draft.recovered(Recovered.YES);
            case NOT_RECOVERED -> draft.recovered(Recovered.NO);
            case TOUCHED -> {
                Double low = flight.peakLowM();
                Double high = flight.peakHighM();
                if (at != null && (low == null || low < at.heightM())) {
                    draft.peakLowM(at.heightM());
                    if (high != null && high < at.heightM()) {
                        draft.peakHighM(null);
                    }
                }
                if (flight.ending() == Ending.CLEAN) {
                    draft.ending(Ending.TOUCHED);
                }
            }
            default -> {}
        }
        return draft.done();
    }

    private static long eventsOf(Reader reader, String flightId, FlightEventKind kind) {
        List<FlightEvent> events = reader.where(FlightEvent.class, "flightId", flightId);
        return events.stream().filter(e -> e.kind() == kind).count();
    }

    private static String words(FlightEventKind kind, @Nullable HeightMark at) {
        String what = kind.word().replace('-', ' ');
        return at == null ? what : what + " " + at.name();
    }
}
