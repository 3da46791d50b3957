package org.rafterbook.review;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Counted;

/**
 * What a judged trial says.
 *
 * @param plan the trial
 * @param alone the same-day comparison from the trial's own flights, the second value over the first; null where no day
 *     holds both values
 * @param all what the whole season with these flights says of the two values; null where it says nothing
 * @param handlingA how the trial's flights with the first value handled
 * @param handlingB how those with the second value handled
 * @param sentences the statement, then what it rests on
 */
public record TrialStatement(
        TrialPlan plan,
        @Nullable SameDayResult alone,
        @Nullable ChangeEffect all,
        HandlingSummary handlingA,
        HandlingSummary handlingB,
        List<String> sentences) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    public TrialStatement {
        sentences = List.copyOf(sentences);
    }

    /**
     * Judges a trial that is complete or was ended.
     *
     * @param season the season with the trial's flights
     * @param flightIds flights of the trial
     * @param answer the effects of that season
     * @param endedWhy what the flyer said on ending it early, null where it was flown to its end or nothing was said
     */
    public static TrialStatement of(
            TrialPlan plan, ReviewInput season, Set<String> flightIds, ReviewAnswer answer, @Nullable String endedWhy) {
        List<ReviewFlight> flights = season.flights().stream()
                .filter(f -> flightIds.contains(f.id()))
                .toList();
        String setting = plan.setting().key();
        ReviewInput own =
                new ReviewInput(season.model(), flights, season.settings(), List.of(), season.fullMotorsOnly());
        SameDayResult alone = new SameDay(own).compare(setting, plan.a(), plan.b());
        ChangeEffect all = answer.changes().stream()
                .filter(c ->
                        c.setting().key().equals(setting) && plan.side(c.from()) != null && plan.side(c.to()) != null)
                .findFirst()
                .orElse(null);
        HandlingSummary a = HandlingSummary.of(at(flights, setting, plan.a()));
        HandlingSummary b = HandlingSummary.of(at(flights, setting, plan.b()));
        List<String> sentences = new ArrayList<>();
        sentences.add(plan.title() + ", " + a.flights() + " + " + b.flights() + " flown: " + inWords(plan, alone));
        if (endedWhy != null || a.flights() < plan.perSide() || b.flights() < plan.perSide()) {
            sentences.add("Ended before all " + plan.order().size() + " were flown"
                    + (endedWhy == null || endedWhy.isBlank() ? "." : ": " + endedWhy.strip() + "."));
        }
        if (alone != null && alone.orderNotMixed()) {
            sentences.add("Order not mixed, one value was always flown first: warming-up could be the cause.");
        }
        flights.forEach(f -> {
            String reason = f.outcome().reason();
            if (reason != null) {
                sentences.add(
                        "Flight " + f.orderInSession() + " of " + DAY.format(f.sessionDate()) + ": " + reason + ".");
            }
        });
        if (all != null) {
            sentences.add("With all flights of " + season.model() + ": " + all.statement());
        }
        if (!a.isEmpty() || !b.isEmpty()) {
            sentences.add("Handling at " + plan.setting().show(plan.a()) + ": " + a.sentence());
            sentences.add("Handling at " + plan.setting().show(plan.b()) + ": " + b.sentence());
        }
        return new TrialStatement(plan, alone, all, a, b, sentences);
    }

    private static List<ReviewFlight> at(List<ReviewFlight> flights, String setting, Level level) {
        return flights.stream()
                .filter(ReviewFlight::counts)
                .filter(f -> {
                    Level flown = f.settings().get(setting);
                    return flown != null && flown.same(level);
                })
                .toList();
    }

    private static String inWords(TrialPlan plan, @Nullable SameDayResult alone) {
        if (alone == null) {
            return "no day holds a clean flight with each value and everything else equal, so the trial alone cannot"
                    + " tell.";
        }
        Double low = alone.lowPercent();
        Double high = alone.highPercent();
        String interval = low == null || high == null
                ? "too few flights for an interval"
                : "90 % interval " + Percent.band(low, high);
        return plan.setting().show(plan.b()) + " against " + plan.setting().show(plan.a()) + " "
                + Percent.signed(alone.effectPercent()) + " (" + interval + "), from " + alone.flightsFrom() + " + "
                + alone.flightsTo() + " clean flights on " + Counted.of(alone.days(), "day")
                + ", these flights alone.";
    }
}
