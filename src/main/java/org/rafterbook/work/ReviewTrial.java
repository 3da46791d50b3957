package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Trial;
import org.rafterbook.review.TrialPlan;
import org.rafterbook.review.TrialState;
import org.rafterbook.review.TrialStatement;

/**
 * A trial of a model, open or judged.
 *
 * @param state what is done and left
 * @param statement what it says; null while it is open
 */
public record ReviewTrial(
        Trial trial,
        TrialPlan plan,
        TrialState state,
        @Nullable TrialStatement statement) {

    public boolean isOpen() {
        return trial.judgedAt() == null;
    }
}
