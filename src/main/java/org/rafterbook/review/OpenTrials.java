package org.rafterbook.review;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Keeps the flights of an open trial out of the estimates until it is judged. */
public final class OpenTrials {

    private OpenTrials() {}

    /**
     * The season without an open trial: without its flights, and without a change between its two values that no other
     * flights made.
     *
     * @param flightIds flights of the trial
     */
    public static ReviewInput setAside(ReviewInput input, TrialPlan trial, Set<String> flightIds) {
        List<ReviewFlight> kept = input.flights().stream()
                .filter(f -> !flightIds.contains(f.id()))
                .toList();
        boolean known = flew(kept, trial.setting().key(), trial.a())
                && flew(kept, trial.setting().key(), trial.b());
        List<TrimStep> steps = known
                ? input.steps()
                : input.steps().stream().filter(s -> !isOf(trial, s)).toList();
        return new ReviewInput(input.model(), kept, input.settings(), steps, input.fullMotorsOnly());
    }

    private static boolean flew(List<ReviewFlight> flights, String setting, Level level) {
        return flights.stream()
                .map(f -> f.settings().get(setting))
                .filter(Objects::nonNull)
                .anyMatch(level::same);
    }

    private static boolean isOf(TrialPlan trial, TrimStep step) {
        String setting = trial.setting().key();
        return step.changed().equals(List.of(setting))
                && trial.side(step.from(setting)) != null
                && trial.side(step.to(setting)) != null;
    }
}
