package org.rafterbook.work;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rafterbook.airframe.Model;
import org.rafterbook.review.ReviewInput;

/**
 * The review of one model.
 *
 * @param input what the estimates rest on, without the flights of an open trial
 * @param points every flight in flying order, those of an open trial included
 * @param riggings the model's history, oldest first
 * @param changes one for each pair of values changed directly into each other, in the order of the first change
 * @param remarks what is said of the season as a whole, and what is needed next
 */
public record ReviewAnswer(
        Model model,
        ReviewInput input,
        List<ReviewPoint> points,
        List<ReviewRigging> riggings,
        List<ReviewChange> changes,
        List<String> remarks) {

    public ReviewAnswer {
        points = List.copyOf(points);
        riggings = List.copyOf(riggings);
        changes = List.copyOf(changes);
        remarks = List.copyOf(remarks);
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

    /** True where the flight enters what is compared. */
    public boolean enters(ReviewPoint point) {
        return point.counts()
                && !(input.fullMotorsOnly() && point.flight().motor().isPartial());
    }

    /** The flight of this id. */
    public Optional<ReviewPoint> point(String flightId) {
        return points.stream().filter(p -> p.flight().id().equals(flightId)).findFirst();
    }

    /** Names of the versions by their number. */
    public Map<Integer, String> versionNames() {
        Map<Integer, String> names = new java.util.TreeMap<>();
        riggings.forEach(r -> names.put(r.versionNumber(), r.version()));
        points.forEach(p -> names.put(p.versionNumber(), p.version()));
        return names;
    }
}
