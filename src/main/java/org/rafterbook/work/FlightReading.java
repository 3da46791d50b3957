package org.rafterbook.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.Recovered;
import org.rafterbook.flight.VenueMark;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.review.Handling;
import org.rafterbook.review.MotorUse;
import org.rafterbook.review.Outcome;
import org.rafterbook.review.OutcomeRule;
import org.rafterbook.review.Peak;
import org.rafterbook.review.ReviewFlight;

/** One stored flight with its events, read as the estimates need it. */
final class FlightReading {

    private final FlightLine line;
    private final Flight flight;
    private final List<FlightEvent> events;
    private final Map<String, VenueMark> marks;

    private final @Nullable HeightMark limit;

    private final boolean lateFlags;

    /**
     * @param limit the lowest thing in the way in its session, null where none is known
     * @param lateFlags true where flags set after the time was known, or nobody knows when, count too
     */
    FlightReading(
            FlightLine line,
            List<FlightEvent> events,
            Map<String, VenueMark> marks,
            @Nullable HeightMark limit,
            boolean lateFlags) {
        this.line = line;
        this.flight = line.flight();
        this.events = events;
        this.marks = marks;
        this.limit = limit;
        this.lateFlags = lateFlags;
    }

    /** The flyer's flag, null where there is none; a time that ended aborted without one is flagged at an unknown moment. */
    static @Nullable FlightFlag flag(Flight flight) {
        String why = flight.leftOutWhy();
        if (why != null) {
            return new FlightFlag(why, flight.leftOutBy(), flight.leftOutAt(), flight.leftOutBeforeTime());
        }
        return flight.ending() == Ending.ABORTED && flight.durationS() != null
                ? new FlightFlag(Ending.ABORTED.word(), null, null, null)
                : null;
    }

    ReviewFlight flight(int order, Rigged rigged, MotorUse motor, SessionAir air, @Nullable Double marginPercent) {
        Double density = air.densityKgM3(flight.launchedAt());
        return new ReviewFlight(
                flight.id(),
                Objects.requireNonNullElse(flight.riggingId(), ""),
                line.session().id(),
                line.session().localDate(),
                order,
                flight.durationS() == null ? 0 : flight.durationS(),
                outcome(flight, events, lateFlags),
                motor,
                density,
                density != null && air.humidityAssumed(),
                rigged.version().build(),
                ReviewLevels.of(rigged.settings(), rigged.values()),
                marginPercent,
                peak(),
                handling(),
                notes());
    }

    /** How the time of a flight with these events is taken. */
    static Outcome outcome(Flight flight, List<FlightEvent> events, boolean lateFlags) {
        List<FlightEvent> steers =
                events.stream().filter(e -> e.kind() == FlightEventKind.STEERED).toList();
        // the first steer is known only where every steer was timed
        boolean timed = steers.stream().allMatch(e -> e.atS() != null);
        Double first = timed
                ? steers.stream()
                        .map(FlightEvent::atS)
                        .filter(Objects::nonNull)
                        .min(Comparator.naturalOrder())
                        .orElse(null)
                : null;
        return new OutcomeRule(
                        flight.durationS(),
                        timed ? flight.ending() : Ending.STEERED,
                        flight.cutShort(),
                        first,
                        flight.leftOutWhy(),
                        flight.leftOutBeforeTime(),
                        lateFlags)
                .outcome();
    }

    private Peak peak() {
        Double touched = of(FlightEventKind.TOUCHED)
                .map(this::markHeightM)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .orElse(null);
        boolean onlyTheEnding = flight.ending() == Ending.TOUCHED
                && of(FlightEventKind.TOUCHED).findAny().isEmpty();
        return new Peak(flight.peakLowM(), flight.peakHighM(), onlyTheEnding ? touchedAtLeastM() : touched);
    }

    /** What a flight came to at least of which only the ending says that it touched, as in a table of flights. */
    private @Nullable Double touchedAtLeastM() {
        Double read = flight.peakLowM();
        return read != null ? read : limit == null ? null : Double.valueOf(limit.heightM());
    }

    private @Nullable Double markHeightM(FlightEvent event) {
        VenueMark mark = event.markId() == null ? null : marks.get(event.markId());
        return mark == null ? event.value() : Double.valueOf(mark.heightM());
    }

    private Handling handling() {
        int stalls = (int) of(FlightEventKind.STALLED).count();
        int noted = (int) of(FlightEventKind.STEERED).count();
        // a table of flights says that one was steered, not how often
        int steers = flight.ending() == Ending.STEERED ? Math.max(1, noted) : noted;
        return new Handling(
                recovery(),
                flight.stalls() != null ? flight.stalls() : stalls > 0 ? Integer.valueOf(stalls) : null,
                steers > 0 || flight.ending() != null ? Integer.valueOf(steers) : null);
    }

    private Handling.@Nullable Recovery recovery() {
        Recovered said = flight.recovered();
        if (said != null) {
            return switch (said) {
                case YES -> Handling.Recovery.YES;
                case NO -> Handling.Recovery.NO;
                case NOT_TRIED -> Handling.Recovery.NOT_TRIED;
            };
        }
        if (of(FlightEventKind.NOT_RECOVERED).findAny().isPresent()) {
            return Handling.Recovery.NO;
        }
        return of(FlightEventKind.RECOVERED).findAny().isPresent() ? Handling.Recovery.YES : null;
    }

    private String notes() {
        List<String> notes = new ArrayList<>();
        Stream.concat(Stream.ofNullable(flight.notes()), events.stream().map(FlightEvent::notes))
                .filter(Objects::nonNull)
                .map(String::strip)
                .filter(n -> !n.isEmpty())
                .forEach(notes::add);
        return String.join("; ", notes);
    }

    private Stream<FlightEvent> of(FlightEventKind kind) {
        return events.stream().filter(e -> e.kind() == kind);
    }
}
