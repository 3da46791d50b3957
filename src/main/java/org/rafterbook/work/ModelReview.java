package org.rafterbook.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.review.Answer;
import org.rafterbook.review.Claims;
import org.rafterbook.review.FarOff;
import org.rafterbook.review.Response;
import org.rafterbook.review.ResponsePoint;
import org.rafterbook.review.ReviewInput;
import org.rafterbook.review.SeasonFigures;
import org.rafterbook.review.SeasonPlans;

/**
 * The review of one model.
 *
 * @param input what the estimates rest on, without the flights of an open trial
 * @param points every flight in flying order, those of an open trial included
 * @param riggings the model's history, oldest first
 * @param changes one for each pair of values changed directly into each other, in the order of the first change
 * @param season scatter and trend; null where too little was flown, or before it is computed
 * @param claims how many changes were judged
 * @param remarks what else is said of the season as a whole, and what is needed next
 * @param farOff clean flights whose times lie so far off that they hardly count; empty before it is computed
 * @param trials the model's trials, oldest first
 * @param plans curves, trials worth flying and what to go back to; null before they are computed
 * @param back versions to go back to, empty before they are computed
 * @param ceiling the chance to touch what is in the way where the model flew last; null before it is computed
 * @param columns names of the settings as the columns of a table of flights have them, by the setting's key
 * @param lateFlags true where flights flagged after their time was known, or nobody knows when, are left out too
 * @param marginsOpen true where margins are missing because they have still to be computed
 */
public record ModelReview(
        Model model,
        ReviewInput input,
        List<ReviewPoint> points,
        List<ReviewRigging> riggings,
        List<ReviewChange> changes,
        @Nullable SeasonFigures season,
        Claims claims,
        List<String> remarks,
        List<FarOff> farOff,
        List<ReviewTrial> trials,
        @Nullable SeasonPlans plans,
        List<GoBack> back,
        @Nullable Answer<TouchRisk> ceiling,
        Map<String, String> columns,
        boolean lateFlags,
        boolean marginsOpen) {

    /** Places on a curve closer than this are one but for what binary arithmetic leaves behind. */
    private static final double SAME_PLACE = 1e-6;

    public ModelReview {
        points = List.copyOf(points);
        riggings = List.copyOf(riggings);
        changes = List.copyOf(changes);
        remarks = List.copyOf(remarks);
        farOff = List.copyOf(farOff);
        trials = List.copyOf(trials);
        back = List.copyOf(back);
        columns = Map.copyOf(columns);
    }

    /**
     * The changes as a person is told them: what always moved together stands once, under the setting named first, though
     * each of them has an answer of its own.
     */
    public List<ReviewChange> changesToTell() {
        List<ReviewChange> told = new ArrayList<>();
        for (ReviewChange change : changes) {
            if (told.stream().noneMatch(change::isToldWith)) {
                told.add(change);
            }
        }
        return told;
    }

    /** What a curve says and what to try next on it; where that is a margin, with a version flown at it. */
    public List<String> sentences(Response response) {
        List<String> sentences = new ArrayList<>(response.sentences());
        sentences.add(response.next().sentence(versionAt(response)));
        return sentences;
    }

    /** The version flown last at the value the next try is compared with; empty where none is. */
    private String versionAt(Response response) {
        Set<String> there = response.points().stream()
                .filter(p -> Math.abs(p.value() - response.next().against()) < SAME_PLACE)
                .map(ResponsePoint::flightId)
                .collect(Collectors.toSet());
        return points.stream()
                .filter(p -> there.contains(p.flight().id()))
                .map(ReviewPoint::version)
                .reduce((one, later) -> later)
                .orElse("");
    }

    /** False where only what can be told at once is here yet. */
    public boolean isComplete() {
        return plans != null;
    }

    /** Versions that were rigged. */
    public int versions() {
        return (int)
                riggings.stream().map(ReviewRigging::versionNumber).distinct().count();
    }

    /** Riggings at which something was changed. */
    public int trimChanges() {
        return (int) riggings.stream().filter(r -> !r.changes().isEmpty()).count();
    }

    /** Flights whose time counts, exactly or as "at least". */
    public int counted() {
        return (int) points.stream().filter(this::enters).count();
    }

    /** Flights that count as "at least this long". */
    public int atLeast() {
        return (int) points.stream().filter(p -> enters(p) && p.atLeast()).count();
    }

    /** Flights of an open trial, which wait until it is judged. */
    public int waiting() {
        return (int) points.stream().filter(ReviewPoint::waiting).count();
    }

    /** Flights that say nothing about the model, each with its reason. */
    public List<ReviewPoint> leftOut() {
        return points.stream().filter(p -> !p.waiting() && !p.flight().counts()).toList();
    }

    /** Flights set aside because they flew on a partial motor. */
    public int setAside() {
        return (int) points.stream().filter(p -> p.counts() && !enters(p)).count();
    }

    /** Flights the flyer flagged, left out or not. */
    public List<ReviewPoint> flagged() {
        return points.stream().filter(p -> p.flag() != null).toList();
    }

    /** True where the flight enters what is compared. */
    public boolean enters(ReviewPoint point) {
        return point.counts()
                && !(input.fullMotorsOnly() && point.flight().motor().isPartial());
    }

    /** The model's usual time, s: the median of its clean flights on full motors; NaN where there is none. */
    public double usualTimeS() {
        double[] times = points.stream()
                .filter(p ->
                        enters(p) && p.flight().isExact() && !p.flight().motor().isPartial())
                .mapToDouble(p -> p.flight().fullDurationS())
                .sorted()
                .toArray();
        int half = times.length / 2;
        return times.length == 0
                ? Double.NaN
                : times.length % 2 == 1 ? times[half] : (times[half - 1] + times[half]) / 2;
    }

    /** The flight of this id. */
    public Optional<ReviewPoint> point(String flightId) {
        return points.stream().filter(p -> p.flight().id().equals(flightId)).findFirst();
    }

    /** The trial that is open. */
    public Optional<ReviewTrial> openTrial() {
        return trials.stream().filter(ReviewTrial::isOpen).findFirst();
    }

    /** Names of the versions by their number. */
    public Map<Integer, String> versionNames() {
        Map<Integer, String> names = new TreeMap<>();
        riggings.forEach(r -> names.put(r.versionNumber(), r.version()));
        points.forEach(p -> names.put(p.versionNumber(), p.version()));
        return names;
    }
}
