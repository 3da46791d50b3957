package org.rafterbook.work;

import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightDraft;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.Recovered;
import org.rafterbook.flight.TurnsUsed;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.power.Wind;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.UserError;

/** What is told of a flight after it has landed; each answer is an entry of its own, none is asked for. */
public final class LandingAnswers {

    /** Why an aborted launch is left out. */
    static final String ABORTED_LAUNCH = "aborted launch";

    private final Logbook logbook;
    private final Clock clock;

    LandingAnswers(Logbook logbook, Clock clock) {
        this.logbook = logbook;
        this.clock = clock;
    }

    /** How it ended; what was called an aborted launch before is none any more. */
    public Flight end(String flightId, LandingEnd end) {
        return logbook.enter("ended: " + end.says(), w -> {
            Flight flight = w.get(Flight.class, flightId);
            if (flight.ending() == Ending.ABORTED && ABORTED_LAUNCH.equals(flight.leftOutWhy())) {
                flight = w.update(unflagged(flight).done());
            }
            forget(w, flightId);
            FlightEventKind kind = end.event();
            if (kind != null) {
                w.insert(new FlightEvent(
                        Logbook.newId(), flightId, kind, flight.durationS(), null, null, LandingEnd.TOLD_AT_LANDING));
            }
            Ending ending = end.ending(touched(w, flightId));
            // an answer to "did that cost time?" belongs to the ending it was given for
            CutShort cutShort = end.cutShort() != null || ending != flight.ending() || wasTouch(flight)
                    ? end.cutShort()
                    : flight.cutShort();
            return w.update(
                    FlightDraft.of(flight).ending(ending).cutShort(cutShort).done());
        });
    }

    /** It was no flight but an aborted launch: its time is kept, and it is flagged to be left out. */
    public Flight aborted(String flightId) {
        return logbook.enter(ABORTED_LAUNCH, w -> {
            Flight flight = w.get(Flight.class, flightId);
            forget(w, flightId);
            return w.update(flagged(w, flight, ABORTED_LAUNCH)
                    .ending(Ending.ABORTED)
                    .cutShort(null)
                    .done());
        });
    }

    private static boolean wasTouch(Flight flight) {
        return flight.ending() == Ending.TOUCHED && flight.cutShort() == CutShort.YES;
    }

    private static boolean touched(Reader reader, String flightId) {
        List<FlightEvent> events = reader.where(FlightEvent.class, "flightId", flightId);
        return events.stream().anyMatch(e -> e.kind() == FlightEventKind.TOUCHED);
    }

    /** Takes away what an earlier answer has noted. */
    static void forget(Writer writer, String flightId) {
        for (FlightEvent event : writer.where(FlightEvent.class, "flightId", flightId)) {
            if (LandingEnd.TOLD_AT_LANDING.equals(event.notes())) {
                writer.remove(FlightEvent.class, event.id());
            }
        }
    }

    /** Whether the touch or the ending cost time; null takes the answer back. */
    public Flight costTime(String flightId, @Nullable CutShort answer) {
        return change(
                flightId,
                "cost time: " + (answer == null ? "no answer" : answer.word()),
                (flight, draft) -> draft.cutShort(answer));
    }

    /** Motor turns left; refused where they are more than the motor had at launch, of a relaunch what the one before left. */
    public Flight turnsLeft(String flightId, @Nullable TypedValue turns) {
        String why = turns == null ? "turns left taken away" : "turns left " + turns.readBack();
        return logbook.enter(why, w -> {
            Flight flight = w.get(Flight.class, flightId);
            if (turns != null) {
                checkAgainstWind(w, flight, turns.si());
            }
            return w.update(FlightDraft.of(flight)
                    .turnsLeft(turns == null ? null : turns.si())
                    .asTyped(typed(flight, "turnsLeft", turns == null ? null : turns.asTyped()))
                    .done());
        });
    }

    /** Turns that the launch before of the same wind has left; null for a first launch, or where nobody counted them. */
    private static @Nullable Double leftBefore(Reader reader, Flight flight) {
        String windId = flight.windId();
        return windId == null || flight.launchNoOfWind() <= 1
                ? null
                : reader.where(Flight.class, "windId", windId).stream()
                        .filter(f -> f.launchNoOfWind() == flight.launchNoOfWind() - 1)
                        .map(Flight::turnsLeft)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(null);
    }

    private static void checkAgainstWind(Reader reader, Flight flight, double left) {
        String windId = flight.windId();
        Wind wind = windId == null ? null : reader.find(Wind.class, windId);
        Double wound = wind == null ? null : wind.turnsWound();
        Double before = leftBefore(reader, flight);
        Optional<String> refusal = Optional.empty();
        if (before != null) {
            refusal = TurnsUsed.refusal(before, 0, left);
        } else if (wind != null && wound != null) {
            Double off = wind.turnsBackedOff();
            refusal = TurnsUsed.refusal(wound, off == null ? 0 : off, left);
        }
        refusal.ifPresent(sentence -> {
            throw UserError.badInput(sentence);
        });
    }

    /** Peak height as a range; null takes it away. */
    public Flight peak(String flightId, @Nullable TypedRange range) {
        String why = range == null ? "peak height taken away" : "peak " + range.readBack();
        return change(
                flightId,
                why,
                (flight, draft) -> draft.peakLowM(range == null ? null : range.lowSi())
                        .peakHighM(range == null ? null : range.highSi())
                        .asTyped(typed(flight, "peakM", range == null ? null : range.asTyped())));
    }

    /** Whether it recovered from an upset. */
    public Flight recovered(String flightId, @Nullable Recovered recovered) {
        return change(
                flightId,
                "recovered: " + (recovered == null ? "no answer" : recovered.word()),
                (flight, draft) -> draft.recovered(recovered));
    }

    /** How often it stalled. */
    public Flight stalls(String flightId, @Nullable Integer count) {
        return change(
                flightId, "stalls " + (count == null ? "taken away" : count), (flight, draft) -> draft.stalls(count));
    }

    public Flight notes(String flightId, String text) {
        String kept = text.strip();
        return change(flightId, "note", (flight, draft) -> draft.notes(kept.isEmpty() ? null : kept));
    }

    /** Flags the flight to be left out, with the reason; null takes the flag away. */
    public Flight leaveOut(String flightId, @Nullable String why) {
        if (why != null && why.isBlank()) {
            throw UserError.badInput("Say why the flight is to be left out.");
        }
        return logbook.enter(
                why == null ? "counts again" : "left out",
                w -> w.update(flagged(w, w.get(Flight.class, flightId), why).done()));
    }

    static FlightDraft unflagged(Flight flight) {
        return FlightDraft.of(flight)
                .leftOutWhy(null)
                .leftOutBy(null)
                .leftOutAt(null)
                .leftOutBeforeTime(null);
    }

    private FlightDraft flagged(Reader reader, Flight flight, @Nullable String why) {
        return why == null
                ? unflagged(flight)
                : FlightDraft.of(flight)
                        .leftOutWhy(why.strip())
                        .leftOutBy(FlyerName.of(reader))
                        .leftOutAt(clock.instant())
                        .leftOutBeforeTime(flight.durationS() == null);
    }

    /** Gives a flight that was just timed its model, as that is rigged now. */
    public Flight giveModel(String flightId, String modelId) {
        return logbook.enter("model of the flight", w -> {
            w.get(Model.class, modelId);
            Flight flight = w.get(Flight.class, flightId);
            return w.update(FlightDraft.of(flight)
                    .riggingId(Riggings.last(w, modelId).id())
                    .done());
        });
    }

    private Flight change(String flightId, String why, BiConsumer<Flight, FlightDraft> how) {
        return logbook.enter(why, w -> {
            Flight flight = w.get(Flight.class, flightId);
            FlightDraft draft = FlightDraft.of(flight);
            how.accept(flight, draft);
            return w.update(draft.done());
        });
    }

    private static Map<String, String> typed(Flight flight, String what, @Nullable String text) {
        Map<String, String> asTyped = new HashMap<>(flight.asTyped());
        if (text == null) {
            asTyped.remove(what);
        } else {
            asTyped.put(what, text);
        }
        return asTyped;
    }
}
