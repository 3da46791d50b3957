package org.rafterbook.ui.hall;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Trial;
import org.rafterbook.review.TrialStatement;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.work.Prepared;
import org.rafterbook.work.TrialNow;

/** The open trial of the model in hand: what to fly next, ending it, and what it says once it is judged. */
public final class TrialModel {

    private final HallModel hall;
    private final FxBackground background;
    private final FxBackground.Slot judging = new FxBackground.Slot();
    private final ReadOnlyObjectWrapper<Optional<TrialStatement>> statement =
            new ReadOnlyObjectWrapper<>(this, "statement", Optional.empty());
    private @Nullable Trial asked;

    TrialModel(HallModel hall, FxBackground background) {
        this.hall = hall;
        this.background = background;
    }

    /** The open trial, null where none is open. */
    @Nullable
    TrialNow now() {
        HallData data = hall.data();
        return data == null ? null : data.prepared().trial();
    }

    /** What the trial judged on this evening says; empty while there is none or it is being computed. */
    public ReadOnlyObjectProperty<Optional<TrialStatement>> statementProperty() {
        return statement.getReadOnlyProperty();
    }

    void detach() {
        judging.cancel();
        asked = null;
    }

    /** Has the statement of a trial judged on this evening computed. */
    void sync(Prepared prepared) {
        Trial judged = prepared.judged();
        if (judged == null) {
            asked = null;
            statement.set(Optional.empty());
        } else if (!judged.equals(asked)) {
            asked = judged;
            statement.set(Optional.empty());
            background
                    .call(progress -> hall.desk().statement(judged.modelId(), judged.id(), progress))
                    .in(judging)
                    .then(statement::set);
        }
    }

    /** Sets the model to the next value in the order drawn. */
    public void setNext() {
        TrialNow now = now();
        if (now != null) {
            hall.change(d -> d.trials().setNext(now.trial().modelId()));
        }
    }

    /** The flight is done with: where it was the trial's, the next value is set, or the trial judged. */
    void landed(String flightId) {
        TrialNow now = now();
        if (now != null) {
            hall.change(d -> d.trials().landed(now.trial().modelId(), flightId));
        }
    }

    /** Ends the trial, which judges it; the reason may be empty. */
    public void end(@Nullable String why, Runnable ended, Consumer<Throwable> otherwise) {
        TrialNow now = now();
        if (now != null) {
            hall.change(d -> d.trials().judge(now.trial().modelId(), why), trial -> ended.run(), otherwise);
        }
    }
}
