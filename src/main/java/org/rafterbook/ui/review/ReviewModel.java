package org.rafterbook.ui.review;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.review.Level;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.Progress;
import org.rafterbook.work.ReviewChange;
import org.rafterbook.work.ReviewDesk;
import org.rafterbook.work.ReviewPoint;

/** What Review shows: the review of one model, computed in the background, and what is picked in it. */
public final class ReviewModel {

    /** The models that have flown and the review of one of them. */
    private record Loaded(List<Model> models, @Nullable ModelReview answer) {}

    private final ReviewDesk desk;
    private final FxBackground background;
    private final FxBackground.Slot slot = new FxBackground.Slot();
    private final FxBackground.Display progress;
    private final ReadOnlyObjectWrapper<List<Model>> models = new ReadOnlyObjectWrapper<>(this, "models", List.of());
    private final ReadOnlyObjectWrapper<@Nullable ModelReview> answer = new ReadOnlyObjectWrapper<>(this, "answer");
    private final ReadOnlyBooleanWrapper loaded = new ReadOnlyBooleanWrapper(this, "loaded");
    private final ObjectProperty<@Nullable ReviewChange> change = new SimpleObjectProperty<>(this, "change");
    private final ObjectProperty<@Nullable ReviewPoint> flight = new SimpleObjectProperty<>(this, "flight");
    private final ObjectProperty<ReviewAxis> axis = new SimpleObjectProperty<>(this, "axis", ReviewAxis.MARGIN);
    private final StringProperty search = new SimpleStringProperty(this, "search", "");
    private final BooleanProperty onlyItsFlights = new SimpleBooleanProperty(this, "onlyItsFlights");
    private final BooleanProperty fullMotorsOnly = new SimpleBooleanProperty(this, "fullMotorsOnly");
    private @Nullable String modelId;
    private @Nullable Subscription subscription;

    ReviewModel(ReviewDesk desk, FxBackground background, FxBackground.Display progress) {
        this.desk = desk;
        this.background = background;
        this.progress = progress;
    }

    /** Loads, and again after each entry while it is shown. */
    void attach() {
        if (subscription == null) {
            subscription = desk.onChange(() -> Platform.runLater(this::load));
        }
        load();
    }

    /** Cancels what is still being computed. */
    void detach() {
        if (subscription != null) {
            subscription.cancel();
            subscription = null;
        }
        slot.cancel();
    }

    void load() {
        String wanted = modelId;
        boolean full = fullMotorsOnly.get();
        background.call(p -> compute(wanted, full, false, p)).in(slot).then(first -> {
            take(first);
            ModelReview shown = first.answer();
            if (shown != null && !shown.changes().isEmpty()) {
                background
                        .call(p -> compute(shown.model().id(), full, true, p))
                        .in(slot)
                        .showing(progress)
                        .then(this::take);
            }
        });
    }

    private Loaded compute(@Nullable String wanted, boolean full, boolean effects, Progress steps) {
        List<Model> flown = desk.models();
        Model model = flown.stream()
                .filter(m -> m.id().equals(wanted))
                .findFirst()
                .or(() -> flown.stream().findFirst())
                .orElse(null);
        if (model == null) {
            return new Loaded(flown, null);
        }
        return new Loaded(flown, effects ? desk.review(model.id(), full, steps) : desk.atOnce(model.id(), full, steps));
    }

    private void take(Loaded now) {
        models.set(now.models());
        ModelReview next = now.answer();
        ModelReview before = answer.get();
        boolean sameModel = before != null
                && next != null
                && before.model().id().equals(next.model().id());
        ReviewChange picked = sameModel ? change.get() : null;
        ReviewPoint point = sameModel ? flight.get() : null;
        if (!sameModel) {
            axis.set(ReviewAxis.MARGIN);
            onlyItsFlights.set(false);
        }
        change.set(null);
        flight.set(null);
        answer.set(next);
        if (next != null) {
            modelId = next.model().id();
            flight.set(point == null ? null : next.point(point.flight().id()).orElse(null));
            change.set(next.changes().stream()
                    .filter(c -> picked != null && same(c, picked))
                    .findFirst()
                    .orElse(next.changes().isEmpty() ? null : next.changes().get(0)));
            if (!sameModel && !hasMargins(next)) {
                axis.set(ReviewAxis.of(next).stream()
                        .filter(a -> !a.isMargin() && isChanged(next, a))
                        .findFirst()
                        .orElse(ReviewAxis.MARGIN));
            }
        }
        loaded.set(true);
    }

    private static boolean same(ReviewChange a, ReviewChange b) {
        return a.setting().key().equals(b.setting().key()) && a.from().same(b.from()) && a.to().same(b.to());
    }

    private static boolean hasMargins(ModelReview answer) {
        return answer.points().stream().anyMatch(p -> p.flight().marginPercent() != null);
    }

    private static boolean isChanged(ModelReview answer, ReviewAxis axis) {
        return answer.changes().stream()
                .anyMatch(c -> axis.setting() != null
                        && c.setting().key().equals(axis.setting().key()));
    }

    void pick(Model model) {
        modelId = model.id();
        load();
    }

    /** Reviews the model of this id from now on. */
    void pick(String id) {
        modelId = id;
        if (subscription != null) {
            load();
        }
    }

    void turnFullMotorsOnly() {
        fullMotorsOnly.set(!fullMotorsOnly.get());
        load();
    }

    /** Picks the flight so many places further in time; where none was picked, counted from after the last one. */
    void step(int by) {
        List<ReviewPoint> timed = drawn();
        if (timed.isEmpty()) {
            return;
        }
        ReviewPoint now = flight.get();
        int at = now == null ? -1 : timed.indexOf(now);
        int next = (at < 0 ? timed.size() : at) + by;
        flight.set(timed.get(Math.max(0, Math.min(timed.size() - 1, next))));
    }

    /** Flights that have a time, in flying order. */
    List<ReviewPoint> drawn() {
        ModelReview now = answer.get();
        return now == null
                ? List.of()
                : now.points().stream().filter(ReviewPoint::timed).toList();
    }

    /** True where the flight is one of those the picked change is about, or all are wanted. */
    boolean isInFront(ReviewPoint point) {
        ReviewChange picked = change.get();
        if (picked == null || !onlyItsFlights.get()) {
            return true;
        }
        Level level = point.flight().settings().get(picked.setting().key());
        return level != null && (level.same(picked.from()) || level.same(picked.to()));
    }

    /** Number of the version whose notes are shown: of the picked flight, else of the picked change's second value. */
    Optional<Integer> notedVersion() {
        ReviewPoint picked = flight.get();
        if (picked != null) {
            return Optional.of(picked.versionNumber());
        }
        return Optional.ofNullable(change.get()).map(ReviewChange::toVersion);
    }

    /** Flights with notes: those that contain what is searched for, else those of the picked version; newest first. */
    List<ReviewPoint> notes() {
        ModelReview now = answer.get();
        if (now == null) {
            return List.of();
        }
        String wanted = search.get().strip().toLowerCase(Locale.ROOT);
        Optional<Integer> version = notedVersion();
        List<ReviewPoint> found = new java.util.ArrayList<>(now.points().stream()
                .filter(p -> !p.flight().notes().isEmpty())
                .filter(p -> wanted.isEmpty()
                        ? version.isEmpty() || version.get() == p.versionNumber()
                        : p.flight().notes().toLowerCase(Locale.ROOT).contains(wanted))
                .toList());
        java.util.Collections.reverse(found);
        return found;
    }

    /** How many flights of the model have notes. */
    int allNotes() {
        ModelReview now = answer.get();
        return now == null
                ? 0
                : (int) now.points().stream()
                        .filter(p -> !p.flight().notes().isEmpty())
                        .count();
    }

    /** The model's usual time, s: the geometric mean of its clean flights on full motors; NaN where there is none. */
    double usualTimeS() {
        ModelReview now = answer.get();
        return now == null
                ? Double.NaN
                : Math.exp(now.points().stream()
                        .filter(p -> now.enters(p)
                                && p.flight().isExact()
                                && !p.flight().motor().isPartial())
                        .mapToDouble(p -> Math.log(p.flight().fullDurationS()))
                        .average()
                        .orElse(Double.NaN));
    }

    ReadOnlyObjectProperty<List<Model>> modelsProperty() {
        return models.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<@Nullable ModelReview> answerProperty() {
        return answer.getReadOnlyProperty();
    }

    /** True once the first answer, or that there is none, is known. */
    ReadOnlyBooleanProperty loadedProperty() {
        return loaded.getReadOnlyProperty();
    }

    ObjectProperty<@Nullable ReviewChange> changeProperty() {
        return change;
    }

    ObjectProperty<@Nullable ReviewPoint> flightProperty() {
        return flight;
    }

    ObjectProperty<ReviewAxis> axisProperty() {
        return axis;
    }

    StringProperty searchProperty() {
        return search;
    }

    BooleanProperty onlyItsFlightsProperty() {
        return onlyItsFlights;
    }

    BooleanProperty fullMotorsOnlyProperty() {
        return fullMotorsOnly;
    }
}
