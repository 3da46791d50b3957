package org.rafterbook.work;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.review.Answer;
import org.rafterbook.review.Ceiling;
import org.rafterbook.review.CeilingModel;
import org.rafterbook.review.ExpectedFlight;
import org.rafterbook.review.Level;
import org.rafterbook.review.NextFlight;
import org.rafterbook.review.ReviewFlight;

/**
 * Looks ahead to the next flight. Flights of an open trial are left out, so that nothing can be read from it before it is
 * judged. The fit of heights, which takes a moment, is kept as long as flights and settings stay the same.
 */
final class Outlooks {

    private static final Answer<TouchRisk> NO_VENUE =
            Answer.cannotTell("The chance to touch cannot be told before tonight's venue is chosen.");
    private static final Answer<TouchRisk> NO_HEIGHT =
            Answer.cannotTell("The chance to touch cannot be told: this venue has no mark yet that costs time.");

    /** What a fit of heights rests on. */
    private record Fitted(List<ReviewFlight> flights, Map<String, Level> now) {}

    private final ReviewDesk desk;
    private final Clock clock;
    private @Nullable Fitted fitted;
    private Answer<CeilingModel> heights = Answer.cannotTell("");

    Outlooks(ReviewDesk desk, Clock clock) {
        this.desk = desk;
        this.clock = clock;
    }

    /**
     * The outlook; empty without a model.
     *
     * @param relaunch true where the flight goes on what the last one left on its motor
     */
    Optional<Outlook> of(Prepared prepared, boolean relaunch, Evening evening, Progress progress) {
        Rigged rigged = prepared.rigged();
        if (rigged == null) {
            return Optional.empty();
        }
        ReviewReading reading = desk.read(rigged.model().id(), progress);
        progress.check();
        List<ReviewFlight> flights = reading.points().stream()
                .filter(p -> !p.waiting())
                .map(ReviewPoint::flight)
                .toList();
        NextFlight next = next(prepared, relaunch, rigged, evening, reading);
        Answer<CeilingModel> model = heights(flights, next.settings(), progress);
        Answer<TouchRisk> touching = touching(evening, rigged.name(), model);
        Double torque = next.launchTorqueNm();
        Double chance = touching instanceof Answer.Known<TouchRisk> known && torque != null
                ? known.value().ceiling().chance(torque)
                : null;
        double[] tops = tops(reading);
        OptionalDouble top = DoubleStream.of(tops).average();
        return Optional.of(new Outlook(
                ExpectedFlight.of(rigged.model().name(), flights, next, model),
                touching,
                chance,
                top.isPresent() ? top.getAsDouble() : null,
                tops.length));
    }

    private synchronized Answer<CeilingModel> heights(
            List<ReviewFlight> flights, Map<String, Level> now, Progress progress) {
        Fitted wanted = new Fitted(flights, now);
        if (!wanted.equals(fitted)) {
            heights = CeilingModel.of(flights, now, share -> !progress.cancelled());
            fitted = wanted;
        }
        return heights;
    }

    private Answer<TouchRisk> touching(Evening evening, String trim, Answer<CeilingModel> model) {
        HeightMark limit = Heights.limiting(evening.heights(), evening.venue());
        return limit == null
                ? evening.venue() == null ? NO_VENUE : NO_HEIGHT
                : model.then(heights ->
                        Answer.known(new TouchRisk(limit, trim, Ceiling.of(heights, limit.heightM()), desk.chance())));
    }

    private NextFlight next(
            Prepared prepared, boolean relaunch, Rigged rigged, Evening evening, ReviewReading reading) {
        LocalDate today = LocalDate.now(clock);
        FlightLine last = relaunch && prepared.again() != null ? prepared.last() : null;
        Wind wind = last == null ? prepared.wind() : last.wind();
        Motor motor = last == null ? prepared.motor() : last.motor();
        WindShare winds = reading.winds();
        Double turns = wind == null
                ? null
                : last == null
                        ? winds.usualUse(wind)
                        : winds.usualUseAgain(wind, last.flight().launchNoOfWind());
        Session session = evening.session();
        return new NextFlight(
                ReviewLevels.of(rigged),
                rigged.version().build(),
                session == null ? "" : session.id(),
                session == null ? today : session.localDate(),
                motor == null ? null : motor.id(),
                turns,
                wind == null || last != null ? null : wind.launchTorqueNm(),
                motor == null ? 1 : motor.fraction(),
                evening.densityKgPerM3());
    }

    /** How far through each flight its top of climb was noted. */
    private static double[] tops(ReviewReading reading) {
        return reading.points().stream()
                .filter(p -> !p.waiting() && p.flight().isExact())
                .mapToDouble(p -> {
                    Double at = reading.eventsOf(p.flight().id()).stream()
                            .filter(e -> e.kind() == FlightEventKind.TOP_OF_CLIMB && e.atS() != null)
                            .map(FlightEvent::atS)
                            .findFirst()
                            .orElse(null);
                    return at == null ? Double.NaN : at / p.flight().durationS();
                })
                .filter(share -> share > 0 && share < 1)
                .toArray();
    }
}
