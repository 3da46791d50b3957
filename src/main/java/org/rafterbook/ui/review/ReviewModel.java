package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
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
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.review.FarOff;
import org.rafterbook.review.Level;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Parts;
import org.rafterbook.work.Job;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.Progress;
import org.rafterbook.work.ReviewChange;
import org.rafterbook.work.ReviewDesk;
import org.rafterbook.work.ReviewPoint;

/** What Review shows: the review of one model, computed in the background, and what is picked in it. */
public final class ReviewModel {

    /** The models that have flown, the review of one of them, and how its history lies. */
    private record Loaded(
            List<Model> models,
            @Nullable ModelReview answer,
            @Nullable StripPlan plan) {

        static Loaded of(List<Model> models, @Nullable ModelReview answer) {
            return new Loaded(models, answer, answer == null ? null : StripPlan.of(answer));
        }
    }

    private final ReviewDesk desk;
    private final FxBackground background;
    private final FxBackground.Slot slot = new FxBackground.Slot();
    private final FxBackground.Slot searching = new FxBackground.Slot();
    private final FxBackground.Display progress;
    private final Parts parts;
    private final List<Runnable> ofTheAnswer = new ArrayList<>();
    private final ReadOnlyObjectWrapper<List<Model>> models = new ReadOnlyObjectWrapper<>(this, "models", List.of());
    private final ReadOnlyBooleanWrapper any = new ReadOnlyBooleanWrapper(this, "any");
    private final ReadOnlyBooleanWrapper loaded = new ReadOnlyBooleanWrapper(this, "loaded");
    private final ReadOnlyBooleanWrapper stopped = new ReadOnlyBooleanWrapper(this, "stopped");
    private final ObjectProperty<@Nullable ReviewChange> change = new SimpleObjectProperty<>(this, "change");
    private final ObjectProperty<@Nullable ReviewPoint> flight = new SimpleObjectProperty<>(this, "flight");
    private final ObjectProperty<ReviewAxis> axis = new SimpleObjectProperty<>(this, "axis", ReviewAxis.MARGIN);
    private final StringProperty search = new SimpleStringProperty(this, "search", "");
    private final BooleanProperty onlyItsFlights = new SimpleBooleanProperty(this, "onlyItsFlights");
    private final BooleanProperty fullMotorsOnly = new SimpleBooleanProperty(this, "fullMotorsOnly", true);
    private final BooleanProperty equalTurns = new SimpleBooleanProperty(this, "equalTurns", true);
    private @Nullable ModelReview answer;
    private @Nullable StripPlan plan;
    private boolean taking;
    private int asked;
    private @Nullable String modelId;
    private @Nullable Subscription subscription;

    ReviewModel(ReviewDesk desk, FxBackground background, FxBackground.Display progress) {
        this.desk = desk;
        this.background = background;
        this.progress = progress;
        parts = new Parts(background);
    }

    /** Shows a part of the place now, and again in a turn of its own when the answer or one of these changes. */
    void part(Runnable show, ObservableValue<?>... of) {
        parts.add(show, of);
        ofTheAnswer.add(show);
    }

    /** The same for a part that lies behind others: it is made when it comes to the front, and again while it is there. */
    void part(ObservableBooleanValue inFront, Runnable show, ObservableValue<?>... of) {
        Runnable ifSeen = () -> {
            if (inFront.get()) {
                show.run();
            }
        };
        part(ifSeen, of);
        inFront.addListener((value, before, now) -> parts.ask(ifSeen));
    }

    /** Does what is left of a part in a turn of its own. */
    void then(Runnable rest) {
        parts.ask(rest);
    }

    /** Loads, and again after each entry while it is shown. */
    void attach() {
        if (subscription == null) {
            subscription = desk.onChange(() -> background.later(this::load));
        }
        load();
    }

    /** True while it is on show. */
    boolean isAttached() {
        return subscription != null;
    }

    /** Cancels what is still being computed. */
    void detach() {
        if (subscription != null) {
            subscription.cancel();
            subscription = null;
        }
        slot.cancel();
    }

    /** Shows what can be told at once, then, where it was not kept, what takes computing. */
    void load() {
        String wanted = modelId;
        boolean full = fullMotorsOnly.get();
        stopped.set(false);
        compute(p -> first(wanted, full, p), first -> {
            take(first);
            ModelReview shown = first.answer();
            if (shown != null && !shown.isComplete()) {
                String id = shown.model().id();
                compute(p -> Loaded.of(first.models(), desk.review(id, full, p)), this::take);
            }
        });
    }

    /** One after another: a newer one cancels the one before, which is then no reason to say that it was stopped. */
    private void compute(Job<Loaded> job, Consumer<Loaded> then) {
        int mine = ++asked;
        background
                .call(job)
                .in(slot)
                .showing(progress)
                .ifCancelled(() -> stopped.set(subscription != null && mine == asked))
                .then(then);
    }

    private Loaded first(@Nullable String wanted, boolean full, Progress steps) {
        List<Model> flown = desk.models();
        Model model = flown.stream()
                .filter(m -> m.id().equals(wanted))
                .findFirst()
                .or(() -> flown.stream().findFirst())
                .orElse(null);
        return Loaded.of(flown, model == null ? null : desk.atOnce(model.id(), full, steps));
    }

    private void take(Loaded now) {
        models.set(now.models());
        ModelReview next = now.answer();
        ModelReview before = answer;
        boolean sameModel = before != null
                && next != null
                && before.model().id().equals(next.model().id());
        ReviewChange picked = sameModel ? change.get() : null;
        ReviewPoint point = sameModel ? flight.get() : null;
        if (!sameModel) {
            axis.set(ReviewAxis.MARGIN);
            onlyItsFlights.set(false);
        }
        taking = true;
        change.set(null);
        flight.set(null);
        plan = now.plan();
        answer = next;
        any.set(next != null);
        if (next != null) {
            modelId = next.model().id();
            flight.set(point == null ? null : next.point(point.flight().id()).orElse(null));
            List<ReviewChange> told = next.changesToTell();
            change.set(told.stream()
                    .filter(c -> picked != null && same(c, picked))
                    .findFirst()
                    .orElse(told.isEmpty() ? null : told.get(0)));
            boolean toldNow =
                    before != null && before.marginsOpen() && axis.get().isMargin();
            if (!sameModel || toldNow) {
                axis.set(ReviewAxis.first(next));
            }
        }
        loaded.set(true);
        ofTheAnswer.forEach(parts::ask);
        taking = false;
    }

    /** True while what is picked is put back after loading, so that nobody has picked it just now. */
    boolean isTaking() {
        return taking;
    }

    private static boolean same(ReviewChange a, ReviewChange b) {
        return a.setting().key().equals(b.setting().key()) && a.from().same(b.from()) && a.to().same(b.to());
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

    /** Makes an entry for the model shown, such as opening a trial; what it changes is loaded by itself. */
    <T> void enter(Function<String, T> entry, Consumer<? super T> then) {
        String id = modelId;
        if (id != null) {
            background.call(p -> entry.apply(id)).entry().then(then);
        }
    }

    /** The same with a place of its own for the failure. */
    <T> void enter(Function<String, T> entry, Consumer<? super T> then, Consumer<Throwable> otherwise) {
        String id = modelId;
        if (id != null) {
            background.call(p -> entry.apply(id)).entry().otherwise(otherwise).then(then);
        }
    }

    /** Reads something else about the model shown. */
    <T> void read(Function<String, T> reading, Consumer<? super T> then) {
        String id = modelId;
        if (id != null) {
            background.call(p -> reading.apply(id)).then(then);
        }
    }

    /** Finds the notes to show, off the JavaFX thread; the last asked for are those that come. */
    void findNotes(Consumer<NotesFound> then) {
        ModelReview now = answer;
        String wanted = search.get();
        Integer version = notedVersion().orElse(null);
        background.call(p -> NotesFound.in(now, wanted, version)).in(searching).then(then);
    }

    /** Picks the flight of this id; none for null. */
    void pickFlight(@Nullable String flightId) {
        ModelReview now = answer;
        flight.set(now == null || flightId == null ? null : now.point(flightId).orElse(null));
    }

    /** Picks the next of the flights that lie far off. */
    void pickFarOff() {
        List<FarOff> far = answer == null ? List.of() : answer.farOff();
        ReviewPoint picked = flight.get();
        String now = picked == null ? "" : picked.flight().id();
        int at = IntStream.range(0, far.size())
                .filter(i -> far.get(i).flightId().equals(now))
                .findFirst()
                .orElse(-1);
        if (!far.isEmpty()) {
            pickFlight(far.get((at + 1) % far.size()).flightId());
        }
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

    ReviewDesk desk() {
        return desk;
    }

    ReadOnlyObjectProperty<List<Model>> modelsProperty() {
        return models.getReadOnlyProperty();
    }

    /** True while there is something to show. */
    ReadOnlyBooleanProperty anyProperty() {
        return any.getReadOnlyProperty();
    }

    /** What is shown now, null before the first answer and in an empty logbook. */
    @Nullable
    ModelReview answer() {
        return answer;
    }

    /** How the history of what is shown lies, null before the first answer. */
    @Nullable
    StripPlan plan() {
        return plan;
    }

    /** A flight in a line. */
    String says(ReviewPoint point) {
        String words = plan == null ? null : plan.words().get(point.flight().id());
        return words == null ? FlightWords.line(point) : words;
    }

    /** True once the first answer, or that there is none, is known. */
    ReadOnlyBooleanProperty loadedProperty() {
        return loaded.getReadOnlyProperty();
    }

    /** True where the flyer stopped the computation. */
    ReadOnlyBooleanProperty stoppedProperty() {
        return stopped.getReadOnlyProperty();
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

    /** Whether the curve's times are drawn, at equal turns and air, instead of those flown. */
    BooleanProperty equalTurnsProperty() {
        return equalTurns;
    }
}
