package org.rafterbook.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.Trial;
import org.rafterbook.flight.VenueMark;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.review.Effects;
import org.rafterbook.review.ReviewFlight;
import org.rafterbook.review.ReviewInput;
import org.rafterbook.review.SettingInfo;
import org.rafterbook.review.TrimStep;

/** Joins what the logbook holds of a model into its review: what screens and commands ask. */
public final class ReviewDesk {

    private static final int KEPT = 8;

    /** The last answers by what they rest on: going back to a model does not compute it again. */
    private final Map<ReviewInput, org.rafterbook.review.ReviewAnswer> known =
            Collections.synchronizedMap(new LinkedHashMap<>(KEPT, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<ReviewInput, org.rafterbook.review.ReviewAnswer> eldest) {
                    return size() > KEPT;
                }
            });

    private final Logbook logbook;
    private final Riggings riggings;
    private final MarginPercent margins;

    public ReviewDesk(Book book, MarginPercent margins) {
        this.logbook = book.logbook();
        this.riggings = book.riggings();
        this.margins = margins;
    }

    /** The models that have flown, the one flown last first, then the others by name. */
    public List<Model> models() {
        List<String> flown = logbook.read(r -> {
            List<FlightLine> lines = r.flights().all();
            LinkedHashSet<String> ids = new LinkedHashSet<>();
            for (int i = lines.size() - 1; i >= 0; i--) {
                Model model = lines.get(i).model();
                if (model != null) {
                    ids.add(model.id());
                }
            }
            return List.copyOf(ids);
        });
        return riggings.models().stream()
                .filter(m -> flown.contains(m.id()))
                .sorted(Comparator.comparingInt((Model m) -> flown.get(0).equals(m.id()) ? 0 : 1)
                        .thenComparing(Model::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    /** Calls the listener after each entry and each undo. */
    public Subscription onChange(Runnable listener) {
        return logbook.onChange(listener);
    }

    /** What the store holds of one model, read at one moment. */
    private record Stored(
            List<FlightLine> lines,
            Map<String, SessionAir> air,
            Map<String, List<FlightEvent>> events,
            Map<String, VenueMark> marks,
            Set<String> openTrials) {}

    /**
     * The review of a model from all its flights.
     *
     * @param fullMotorsOnly true to set flights on partial motors aside
     */
    public ReviewAnswer review(String modelId, boolean fullMotorsOnly, Progress progress) {
        return answer(modelId, fullMotorsOnly, progress, input -> effects(input, progress));
    }

    /** What can be said at once: everything but the effects, whose words are still open. */
    public ReviewAnswer atOnce(String modelId, boolean fullMotorsOnly, Progress progress) {
        return answer(modelId, fullMotorsOnly, progress, Effects::atOnce);
    }

    private org.rafterbook.review.ReviewAnswer effects(ReviewInput input, Progress progress) {
        org.rafterbook.review.ReviewAnswer kept = known.get(input);
        if (kept == null) {
            kept = Effects.of(input, share -> {
                progress.step(Math.round(100 * share), 100, "per cent");
                return !progress.cancelled();
            });
            known.put(input, kept);
        }
        return kept;
    }

    private ReviewAnswer answer(
            String modelId,
            boolean fullMotorsOnly,
            Progress progress,
            Function<ReviewInput, org.rafterbook.review.ReviewAnswer> judge) {
        List<Rigged> strip = riggings.strip(modelId);
        Stored stored = logbook.read(r -> read(r, modelId));
        progress.check();
        List<ReviewPoint> points = points(strip, stored);
        ReviewInput input = input(strip, points, stored, fullMotorsOnly);
        org.rafterbook.review.ReviewAnswer judged = judge.apply(input);
        return new ReviewAnswer(
                logbook.read(r -> r.get(Model.class, modelId)),
                input,
                points,
                history(strip),
                new ReviewChanges(strip, input).of(judged),
                judged.remarks());
    }

    private static Stored read(Reader reader, String modelId) {
        List<FlightLine> lines = reader.flights().ofModel(modelId);
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
        Map<String, SessionAir> air = new HashMap<>();
        reader.flights().airOf(sessions).stream()
                .collect(Collectors.groupingBy(AirReading::sessionId))
                .forEach((session, readings) -> air.put(session, new SessionAir(readings)));
        return new Stored(
                lines,
                air,
                reader.whereIn(FlightEvent.class, "flightId", flights).stream()
                        .collect(Collectors.groupingBy(FlightEvent::flightId)),
                reader.whereIn(VenueMark.class, "venueId", venues).stream()
                        .collect(Collectors.toMap(VenueMark::id, m -> m)),
                reader.where(Trial.class, "modelId", modelId).stream()
                        .filter(t -> t.judgedAt() == null)
                        .map(Trial::id)
                        .collect(Collectors.toSet()));
    }

    private List<ReviewPoint> points(List<Rigged> strip, Stored stored) {
        Map<String, Rigged> byRigging = new HashMap<>();
        for (Rigged rigged : strip) {
            Rigging rigging = rigged.rigging();
            if (rigging != null) {
                byRigging.put(rigging.id(), rigged);
            }
        }
        WindShare winds = new WindShare(stored.lines());
        Map<String, Integer> inSession = new HashMap<>();
        List<ReviewPoint> points = new ArrayList<>();
        for (FlightLine line : stored.lines()) {
            Rigged rigged =
                    line.rigging() == null ? null : byRigging.get(line.rigging().id());
            if (rigged != null) {
                int order = inSession.merge(line.session().id(), 1, Integer::sum);
                FlightReading reading = new FlightReading(
                        line, stored.events().getOrDefault(line.flight().id(), List.of()), stored.marks());
                ReviewFlight flight = reading.flight(
                        order,
                        rigged,
                        winds.of(line),
                        stored.air().getOrDefault(line.session().id(), new SessionAir(List.of())),
                        margins.percent(
                                rigged.version().id(),
                                line.motor() == null ? null : line.motor().id()));
                points.add(new ReviewPoint(
                        flight,
                        rigged.name(),
                        rigged.version().number(),
                        line.flight().launchedAt(),
                        line.session().zone(),
                        isIn(stored.openTrials(), rigged)));
            }
        }
        return points;
    }

    static boolean isIn(Set<String> openTrials, Rigged rigged) {
        Rigging rigging = rigged.rigging();
        return rigging != null && rigging.trialId() != null && openTrials.contains(rigging.trialId());
    }

    private static ReviewInput input(
            List<Rigged> strip, List<ReviewPoint> points, Stored stored, boolean fullMotorsOnly) {
        List<TrimStep> steps = new ArrayList<>();
        for (int i = 1; i < strip.size(); i++) {
            if (!isIn(stored.openTrials(), strip.get(i - 1)) && !isIn(stored.openTrials(), strip.get(i))) {
                TrimStep step = step(strip.get(i - 1), strip.get(i));
                if (!step.changed().isEmpty()) {
                    steps.add(step);
                }
            }
        }
        List<SettingInfo> settings = strip.isEmpty()
                ? List.of()
                : strip.get(0).settings().stream().map(ReviewLevels::info).toList();
        return new ReviewInput(
                strip.isEmpty() ? "" : strip.get(0).model().name(),
                points.stream()
                        .filter(p -> !p.waiting())
                        .map(ReviewPoint::flight)
                        .toList(),
                settings,
                steps,
                fullMotorsOnly);
    }

    static TrimStep step(Rigged before, Rigged after) {
        return new TrimStep(
                ReviewLevels.of(before.settings(), before.values()), ReviewLevels.of(after.settings(), after.values()));
    }

    /** The strip as it is told. */
    static List<ReviewRigging> history(List<Rigged> strip) {
        Map<String, List<TrimChange>> changes = Riggings.changes(strip);
        Set<String> seen = new HashSet<>();
        List<ReviewRigging> history = new ArrayList<>();
        for (Rigged rigged : strip) {
            @Nullable Rigging rigging = rigged.rigging();
            if (rigging != null) {
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
        }
        return history;
    }
}
