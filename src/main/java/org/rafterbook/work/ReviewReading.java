package org.rafterbook.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.Trial;
import org.rafterbook.flight.VenueMark;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Reader;
import org.rafterbook.power.Motor;
import org.rafterbook.review.Level;
import org.rafterbook.review.ReviewInput;
import org.rafterbook.review.SettingInfo;
import org.rafterbook.review.TrialState;
import org.rafterbook.review.TrimStep;

/** The flights, riggings and trials of one model as the review takes them, read at one moment. */
final class ReviewReading {

    private final List<Rigged> strip;
    private final Map<String, Rigged> byRigging = new HashMap<>();
    private final List<FlightLine> lines;
    private final Map<String, SessionAir> air = new HashMap<>();
    private final Map<String, List<FlightEvent>> events;
    private final Map<String, VenueMark> marks;
    private final List<Trial> trials;
    private final @Nullable HeightMark limit;
    private final Map<String, @Nullable HeightMark> limitWhereTouched = new HashMap<>();
    private final boolean lateFlags;
    private final FlownMargins margins;
    private final List<ReviewPoint> points;

    /**
     * Reads.
     *
     * @param strip every rigging of the model, oldest first
     * @param lateFlags true where flags set after the time was known, or nobody knows when, count too
     * @param quickly true to leave out margins that would have to be computed
     * @param progress told of each margin, which may take a lattice
     */
    ReviewReading(
            Reader reader,
            List<Rigged> strip,
            String modelId,
            MarginPercent margins,
            boolean lateFlags,
            boolean quickly,
            Progress progress) {
        this.strip = strip;
        this.lateFlags = lateFlags;
        lines = reader.flights().ofModel(modelId);
        Set<String> sessions = new LinkedHashSet<>();
        Set<String> venues = new LinkedHashSet<>();
        List<String> flights = new ArrayList<>();
        for (FlightLine line : lines) {
            flights.add(line.flight().id());
            sessions.add(line.session().id());
            if (line.venue() != null) {
                venues.add(line.venue().id());
            }
        }
        reader.flights().airOf(sessions).stream()
                .collect(Collectors.groupingBy(AirReading::sessionId))
                .forEach((session, readings) -> air.put(session, new SessionAir(readings)));
        events = FlightOutcomes.events(reader, flights);
        marks = reader.whereIn(VenueMark.class, "venueId", venues).stream()
                .collect(Collectors.toMap(VenueMark::id, m -> m));
        trials = reader.where(Trial.class, "modelId", modelId);
        limit = limit(reader);
        for (FlightLine line : lines) {
            if (line.flight().ending() == Ending.TOUCHED
                    && !limitWhereTouched.containsKey(line.session().id())) {
                limitWhereTouched.put(line.session().id(), limit(reader, line));
            }
        }
        strip.forEach(r -> byRigging.put(Objects.requireNonNull(r.rigging()).id(), r));
        this.margins = new FlownMargins(lines, byRigging, margins, quickly, progress);
        points = flown();
    }

    /** Of the latest session in which a height is known: one flight in a hall nobody named must not empty the answer. */
    private @Nullable HeightMark limit(Reader reader) {
        Set<String> asked = new HashSet<>();
        for (int i = lines.size() - 1; i >= 0; i--) {
            FlightLine line = lines.get(i);
            HeightMark found = asked.add(line.session().id()) ? limit(reader, line) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private static @Nullable HeightMark limit(Reader reader, FlightLine line) {
        return Heights.limiting(Heights.of(reader, line.session(), line.venue()), line.venue());
    }

    /** Every rigging, oldest first; never empty. */
    List<Rigged> strip() {
        return strip;
    }

    /** What the settings stand at now, keyed by setting. */
    Map<String, Level> now() {
        return ReviewLevels.of(strip.get(strip.size() - 1));
    }

    /** Every flight in flying order. */
    List<ReviewPoint> points() {
        return points;
    }

    /** What was noted during a flight. */
    List<FlightEvent> eventsOf(String flightId) {
        return events.getOrDefault(flightId, List.of());
    }

    /** The model's trials, oldest first. */
    List<Trial> trials() {
        return trials;
    }

    /** The lowest thing in the way where the model flew last with a height known; null where none is. */
    @Nullable
    HeightMark limit() {
        return limit;
    }

    /** What each flight took out of its motor. */
    WindShare winds() {
        return new WindShare(lines);
    }

    /** The motor flown last, null where none was noted. */
    @Nullable
    String lastMotor() {
        return lines.stream()
                .map(FlightLine::motor)
                .filter(Objects::nonNull)
                .reduce((one, next) -> next)
                .map(Motor::id)
                .orElse(null);
    }

    /** True where the margin of any version has still to be computed. */
    boolean marginsOpen() {
        return margins.isOpen();
    }

    private List<ReviewPoint> flown() {
        Set<String> waiting = openTrials();
        WindShare winds = winds();
        Map<String, Integer> inSession = new HashMap<>();
        List<ReviewPoint> all = new ArrayList<>();
        for (FlightLine line : lines) {
            Rigged rigged =
                    line.rigging() == null ? null : byRigging.get(line.rigging().id());
            if (rigged != null) {
                all.add(new ReviewPoint(
                        reading(line)
                                .flight(
                                        inSession.merge(line.session().id(), 1, Integer::sum),
                                        rigged,
                                        winds.of(line),
                                        air.getOrDefault(line.session().id(), new SessionAir(List.of())),
                                        margins.of(rigged, line)),
                        rigged.name(),
                        rigged.version().number(),
                        line.flight().launchedAt(),
                        line.session().zone(),
                        isIn(waiting, rigged),
                        FlightReading.flag(line.flight())));
            }
        }
        return List.copyOf(all);
    }

    private FlightReading reading(FlightLine line) {
        return new FlightReading(
                line,
                events.getOrDefault(line.flight().id(), List.of()),
                marks,
                limitWhereTouched.get(line.session().id()),
                lateFlags);
    }

    private Set<String> openTrials() {
        return trials.stream().filter(t -> t.judgedAt() == null).map(Trial::id).collect(Collectors.toSet());
    }

    private static boolean isIn(Set<String> trialIds, Rigged rigged) {
        Rigging rigging = rigged.rigging();
        return rigging != null && rigging.trialId() != null && trialIds.contains(rigging.trialId());
    }

    /** Ids of the flights made on riggings of a trial. */
    Set<String> flightsOf(String trialId) {
        Set<String> riggings = strip.stream()
                .filter(r -> isIn(Set.of(trialId), r))
                .map(r -> Objects.requireNonNull(r.rigging()).id())
                .collect(Collectors.toSet());
        return points.stream()
                .filter(p -> riggings.contains(p.flight().riggingId()))
                .map(p -> p.flight().id())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The same flights as a trial takes them; one in the air fills no place yet. */
    List<TrialState.TrialFlight> trialFlights(Set<String> flightIds, String settingId) {
        return points.stream()
                .filter(p -> flightIds.contains(p.flight().id()) && p.timed())
                .map(p -> new TrialState.TrialFlight(
                        p.flight().id(),
                        p.flight().sessionId(),
                        p.flight().settings().getOrDefault(settingId, Level.word("")),
                        p.flight().counts()))
                .toList();
    }

    /**
     * What the estimates rest on: as if an open trial had not been flown yet.
     *
     * @param fullMotorsOnly true to set flights on partial motors aside where any flight that counts flew on a full one
     */
    ReviewInput input(boolean fullMotorsOnly) {
        boolean anyFull =
                points.stream().anyMatch(p -> p.counts() && !p.flight().motor().isPartial());
        return new ReviewInput(
                strip.get(0).model().name(),
                points.stream()
                        .filter(p -> !p.waiting())
                        .map(ReviewPoint::flight)
                        .toList(),
                settings(),
                TrimStep.between(told().stream().map(ReviewLevels::of).toList()),
                fullMotorsOnly && anyFull);
    }

    /** The riggings the estimates know of: those of an open trial are not told yet. */
    List<Rigged> told() {
        Set<String> open = openTrials();
        return strip.stream().filter(r -> !isIn(open, r)).toList();
    }

    List<SettingInfo> settings() {
        return strip.get(0).settings().stream().map(ReviewLevels::info).toList();
    }

    /** The definition of a setting, null where it is gone. */
    @Nullable
    SettingDef definition(String settingId) {
        return strip.get(0).settings().stream()
                .filter(d -> d.id().equals(settingId))
                .findFirst()
                .orElse(null);
    }

    /** The model's history, oldest first. */
    List<ReviewRigging> history() {
        return history(strip);
    }

    /** A model's history as told of its strip, oldest first. */
    static List<ReviewRigging> history(List<Rigged> strip) {
        Map<String, List<TrimChange>> changes = Riggings.changes(strip);
        Set<String> seen = new HashSet<>();
        List<ReviewRigging> history = new ArrayList<>();
        for (Rigged rigged : strip) {
            Rigging rigging = Objects.requireNonNull(rigged.rigging());
            boolean back = !seen.add(rigged.version().id());
            history.add(new ReviewRigging(
                    rigging.id(),
                    rigged.name(),
                    rigged.version().number(),
                    changes.getOrDefault(rigging.id(), List.of()).stream()
                            .map(ReviewLevels::words)
                            .toList(),
                    back,
                    rigging.trialId() != null));
        }
        return history;
    }

    /** Every version of the strip once, in the order first rigged. */
    List<Rigged> versions() {
        Map<String, Rigged> versions = new LinkedHashMap<>();
        strip.forEach(r -> versions.putIfAbsent(r.version().id(), r));
        return List.copyOf(versions.values());
    }
}
