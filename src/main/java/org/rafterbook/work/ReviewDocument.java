package org.rafterbook.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Trial;
import org.rafterbook.review.Answer;
import org.rafterbook.review.Ceiling;
import org.rafterbook.review.Estimate;
import org.rafterbook.review.Forecast;
import org.rafterbook.review.HandlingSummary;
import org.rafterbook.review.Level;
import org.rafterbook.review.Rate;
import org.rafterbook.review.Response;
import org.rafterbook.review.SameDayResult;
import org.rafterbook.review.SeasonFigures;
import org.rafterbook.review.Share;
import org.rafterbook.review.Span;
import org.rafterbook.review.TrialProposal;
import org.rafterbook.review.TrialStatement;

/**
 * The review as the value of one JSON document: maps, lists, texts and numbers, units in the keys; what cannot be told is
 * null with a sentence under {@code missing}. Settings have the names of their columns in a table of flights.
 */
public final class ReviewDocument {

    private final ModelReview review;

    private ReviewDocument(ModelReview review) {
        this.review = review;
    }

    /** The document of these reviews. */
    public static Map<String, @Nullable Object> of(List<ModelReview> reviews) {
        List<Map<String, @Nullable Object>> models = new ArrayList<>();
        List<Map<String, @Nullable Object>> changes = new ArrayList<>();
        for (ModelReview review : reviews) {
            ReviewDocument document = new ReviewDocument(review);
            models.add(document.model());
            review.changes().forEach(c -> changes.add(document.change(c)));
        }
        Map<String, @Nullable Object> whole = new LinkedHashMap<>();
        whole.put("models", models);
        whole.put("changes", changes);
        return whole;
    }

    private Map<String, @Nullable Object> model() {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("model", review.model().name());
        entry.put("flights", review.counted());
        entry.put("at_least", review.atLeast());
        entry.put("left_out", review.leftOut().size());
        entry.put("set_aside_partial", review.setAside());
        entry.put("waiting_for_trial", review.waiting());
        entry.put("versions", review.versions());
        entry.put("riggings", review.riggings().size());
        entry.put("trim_changes", review.trimChanges());
        entry.put("changes_judged", review.claims().judged());
        season(entry);
        entry.put("sentences", ReviewWords.basis(review));
        entry.put(
                "left_out_flights",
                review.points().stream()
                        .filter(p -> p.flag() != null || review.leftOut().contains(p))
                        .map(ReviewDocument::leftOut)
                        .toList());
        entry.put("handling", handling());
        entry.put("curves", curves());
        entry.put("touching", touching());
        entry.put("proposals", proposals());
        entry.put("settled", review.plans() == null ? List.of() : review.plans().settled());
        entry.put("going_back", review.back().stream().map(ReviewDocument::back).toList());
        entry.put("trials", review.trials().stream().map(this::trial).toList());
        return entry;
    }

    private void season(Map<String, @Nullable Object> entry) {
        SeasonFigures season = review.season();
        entry.put("flight_scatter_percent", season == null ? null : Double.valueOf(100 * season.flightScatter()));
        Double days = season == null ? null : season.dayScatter();
        entry.put("day_scatter_percent", days == null ? null : Double.valueOf(100 * days));
        Estimate trend = season == null ? null : season.trend();
        entry.put("trend_percent", trend == null ? null : Double.valueOf(trend.effectPercent()));
        entry.put("trend_low_percent", trend == null ? null : Double.valueOf(trend.lowPercent()));
        entry.put("trend_high_percent", trend == null ? null : Double.valueOf(trend.highPercent()));
        entry.put("held_equal", season == null ? List.of() : season.heldEqual());
        if (season != null && days == null) {
            entry.put("day_scatter_missing", "No day holds two flights that count: fly two or more on one day.");
        }
        if (season == null) {
            entry.put("missing", "Scatter and trend need two flights that count, one of them clean.");
        } else if (trend == null) {
            entry.put("trend_missing", "All was flown on one date: a trend needs two.");
        }
    }

    private static Map<String, @Nullable Object> leftOut(ReviewPoint point) {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        FlightFlag flag = point.flag();
        entry.put("session_date", point.flight().sessionDate().toString());
        entry.put("flight_of_session", point.flight().orderInSession());
        entry.put("left_out", !point.flight().counts());
        entry.put("reason", point.flight().outcome().reason());
        entry.put("flagged_by", flag == null ? null : flag.by());
        entry.put(
                "flagged_at",
                flag == null || flag.at() == null ? null : flag.at().toString());
        entry.put("flagged_before_time", flag == null ? null : flag.beforeTime());
        if (flag == null) {
            entry.put("missing", "Nobody flagged it.");
        } else if (flag.by() == null || flag.at() == null || flag.beforeTime() == null) {
            entry.put("missing", "Who flagged it, when, or whether before its time was known was not noted.");
        }
        return entry;
    }

    private Map<String, @Nullable Object> change(ReviewChange change) {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("model", review.model().name());
        entry.put("setting", column(change.setting().key()));
        entry.put("from", value(change.from()));
        entry.put("to", value(change.to()));
        entry.put("comparison", change.comparison().word());
        entry.put("effect_percent", change.effectPercent());
        entry.put("low_percent", change.lowPercent());
        entry.put("high_percent", change.highPercent());
        entry.put("probability_raised", change.probabilityRaised());
        entry.put("word", change.word().word());
        entry.put("flights_from", change.flightsFrom());
        entry.put("flights_to", change.flightsTo());
        entry.put("common_days", change.commonDays());
        entry.put(
                "together_with",
                change.said().togetherWith().stream().map(this::column).toList());
        entry.put("label", change.setting().label());
        entry.put("unit", change.setting().unit());
        SameDayResult sameDay = change.sameDay();
        entry.put("same_day_effect_percent", sameDay == null ? null : Double.valueOf(sameDay.effectPercent()));
        entry.put("same_day_low_percent", sameDay == null ? null : sameDay.lowPercent());
        entry.put("same_day_high_percent", sameDay == null ? null : sameDay.highPercent());
        entry.put("same_day_probability", sameDay == null ? null : Double.valueOf(sameDay.p()));
        entry.put("same_day_flights_from", sameDay == null ? null : Integer.valueOf(sameDay.flightsFrom()));
        entry.put("same_day_flights_to", sameDay == null ? null : Integer.valueOf(sameDay.flightsTo()));
        entry.put("same_day_days", sameDay == null ? null : Integer.valueOf(sameDay.days()));
        entry.put("order_not_mixed", sameDay == null ? null : Boolean.valueOf(sameDay.orderNotMixed()));
        entry.put("handling_from", handling(change.handlingFrom()));
        entry.put("handling_to", handling(change.handlingTo()));
        entry.put("sentences", ReviewWords.sentences(change));
        why(entry, "missing", ReviewWords.missing(change));
        why(entry, "same_day_missing", ReviewWords.sameDayMissing(change));
        return entry;
    }

    private static void why(Map<String, @Nullable Object> entry, String key, @Nullable String missing) {
        if (missing != null) {
            entry.put(key, missing);
        }
    }

    /** A setting's name in the heading of its column; anything else that changed is named in words. */
    private String column(String key) {
        return review.columns().getOrDefault(key, key);
    }

    private static Object value(Level level) {
        Double number = level.asNumber();
        return number == null ? level.label() : number;
    }

    private List<Map<String, @Nullable Object>> handling() {
        List<Map<String, @Nullable Object>> rows = new ArrayList<>();
        HandlingSummary.byMargin(review.input().flights(), HandlingSummary.MARGIN_STRETCH)
                .forEach((span, handling) -> {
                    Map<String, @Nullable Object> row = new LinkedHashMap<>();
                    row.put("of", "margin");
                    row.put("from_percent", span.low());
                    row.put("to_percent", span.high());
                    row.putAll(handling(handling));
                    rows.add(row);
                });
        review.input()
                .settings()
                .forEach(setting -> HandlingSummary.bySetting(review.input().flights(), setting.key())
                        .forEach((level, handling) -> {
                            Map<String, @Nullable Object> row = new LinkedHashMap<>();
                            row.put("of", column(setting.key()));
                            row.put("value", value(level));
                            row.putAll(handling(handling));
                            rows.add(row);
                        }));
        return rows;
    }

    private static Map<String, @Nullable Object> handling(HandlingSummary handling) {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("flights", handling.flights());
        Share recovered = handling.recovered();
        entry.put("upsets", recovered.of());
        entry.put("upsets_recovered", recovered.count());
        entry.put("recovered_low", recovered.isKnown() ? recovered.low() : null);
        entry.put("recovered_high", recovered.isKnown() ? recovered.high() : null);
        rate(entry, "stalls", handling.stalls());
        rate(entry, "steers", handling.steers());
        List<String> open = new ArrayList<>();
        if (!recovered.isKnown()) {
            open.add("Nobody noted whether it recovered from an upset.");
        }
        if (!handling.stalls().isKnown()) {
            open.add("Nobody counted stalls.");
        }
        if (!handling.steers().isKnown()) {
            open.add("Nobody counted steers.");
        }
        if (!open.isEmpty()) {
            entry.put("missing", String.join(" ", open));
        }
        return entry;
    }

    private static void rate(Map<String, @Nullable Object> entry, String what, Rate rate) {
        entry.put(what, rate.isKnown() ? rate.count() : null);
        entry.put(what + "_flights", rate.flights());
        entry.put(what + "_per_flight", rate.isKnown() ? rate.perFlight() : null);
        entry.put(what + "_per_flight_low", rate.isKnown() ? rate.low() : null);
        entry.put(what + "_per_flight_high", rate.isKnown() ? rate.high() : null);
    }

    private List<Map<String, @Nullable Object>> curves() {
        List<Map<String, @Nullable Object>> curves = new ArrayList<>();
        if (review.plans() != null) {
            curves.add(curve("margin", review.plans().margin()));
            review.plans().responses().forEach((setting, response) -> curves.add(curve(column(setting), response)));
        }
        return curves;
    }

    private Map<String, @Nullable Object> curve(String of, Answer<Response> answer) {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        Response response = answer instanceof Answer.Known<Response> known ? known.value() : null;
        entry.put("of", of);
        entry.put("unit", response == null ? null : response.axis().unit());
        entry.put("flights", response == null ? null : response.points().size());
        span(entry, "flown", response == null ? null : response.flown());
        span(entry, "best", response == null ? null : response.bestFlown());
        span(entry, "little_lost", response == null ? null : response.littleLostFlown());
        entry.put(
                "curve",
                response == null
                        ? null
                        : response.curve().stream()
                                .filter(p -> response.flown().holds(p.value()))
                                .map(ReviewDocument::place)
                                .toList());
        entry.put("sentences", response == null ? List.of() : review.sentences(response));
        if (answer instanceof Answer.CannotTell<Response> open) {
            entry.put("missing", open.sentence());
        }
        if (response != null && response.bestFlown() == null) {
            entry.put("best_missing", response.bestInWords());
        }
        if (response != null && response.littleLostFlown() == null) {
            entry.put("little_lost_missing", response.littleLostInWords());
        }
        return entry;
    }

    private static Map<String, @Nullable Object> place(Response.CurvePoint point) {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("value", point.value());
        entry.put("duration_s", Math.exp(point.logDuration()));
        entry.put("low_s", Math.exp(point.logLow()));
        entry.put("high_s", Math.exp(point.logHigh()));
        return entry;
    }

    private static void span(Map<String, @Nullable Object> entry, String what, @Nullable Span span) {
        entry.put(what + "_low", span == null ? null : Double.valueOf(span.low()));
        entry.put(what + "_high", span == null ? null : Double.valueOf(span.high()));
    }

    private @Nullable Map<String, @Nullable Object> touching() {
        Answer<TouchRisk> answer = review.ceiling();
        if (answer == null) {
            return null;
        }
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        TouchRisk risk = answer instanceof Answer.Known<TouchRisk> known ? known.value() : null;
        entry.put("obstacle", risk == null ? null : risk.limit().name());
        entry.put("version", risk == null ? null : risk.trim());
        entry.put("height_m", risk == null ? null : Double.valueOf(risk.limit().heightM()));
        entry.put(
                "flights", risk == null ? null : Integer.valueOf(risk.ceiling().flights()));
        entry.put(
                "touched", risk == null ? null : Integer.valueOf(risk.ceiling().touched()));
        entry.put(
                "as_high", risk == null ? null : Integer.valueOf(risk.ceiling().reached()));
        entry.put("below", risk == null ? null : Integer.valueOf(risk.ceiling().below()));
        entry.put(
                "not_known",
                risk == null ? null : Integer.valueOf(risk.ceiling().notKnown()));
        List<Map<String, @Nullable Object>> torques = new ArrayList<>();
        for (double chance : TouchRisk.CHANCES) {
            Ceiling.Advice advice = risk == null ? null : risk.ceiling().torqueFor(chance);
            Map<String, @Nullable Object> one = new LinkedHashMap<>();
            one.put("chance", chance);
            one.put("launch_torque_nmm", advice == null ? null : Double.valueOf(1000 * advice.torqueNm()));
            one.put("launch_torque_low_nmm", advice == null ? null : end(advice.lowNm()));
            one.put("launch_torque_high_nmm", advice == null ? null : end(advice.highNm()));
            one.put("limited_by_what_was_flown", advice == null ? null : Boolean.valueOf(advice.limitedByFlown()));
            if (advice == null) {
                one.put("missing", "Even half the lowest torque flown has a higher chance to touch: fly lower first.");
            } else if (end(advice.lowNm()) == null || end(advice.highNm()) == null) {
                one.put("interval_missing", "That end lies beyond the torques that are told of.");
            }
            torques.add(one);
        }
        entry.put("torques", risk == null ? null : torques);
        if (answer instanceof Answer.CannotTell<TouchRisk> open) {
            entry.put("missing", open.sentence());
        }
        return entry;
    }

    /** An end of an interval in N mm, null where it lies beyond what is told. */
    private static @Nullable Double end(double torqueNm) {
        return torqueNm > 0 && Double.isFinite(torqueNm) ? Double.valueOf(1000 * torqueNm) : null;
    }

    private List<Map<String, @Nullable Object>> proposals() {
        List<Map<String, @Nullable Object>> proposals = new ArrayList<>();
        for (TrialProposal proposal : review.plans() == null
                ? List.<TrialProposal>of()
                : review.plans().proposals()) {
            Map<String, @Nullable Object> entry = new LinkedHashMap<>();
            Forecast forecast = proposal.forecast();
            entry.put("setting", column(proposal.setting().key()));
            entry.put("from", value(proposal.from()));
            entry.put("to", value(proposal.to()));
            entry.put("open", proposal.open().word());
            entry.put("flights_each", proposal.perSide());
            entry.put(
                    "half_width_percent",
                    forecast == null ? null : Double.valueOf(100 * Math.expm1(forecast.halfWidth())));
            entry.put("chance_clear", forecast == null ? null : Double.valueOf(forecast.chanceClear()));
            entry.put("sentences", proposal.sentences());
            if (forecast == null) {
                entry.put("missing", "A forecast needs two flights that count, one of them clean.");
            }
            proposals.add(entry);
        }
        return proposals;
    }

    private static Map<String, @Nullable Object> back(GoBack choice) {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("version", choice.name());
        entry.put("why", choice.why());
        return entry;
    }

    private Map<String, @Nullable Object> trial(ReviewTrial one) {
        Trial trial = one.trial();
        TrialStatement statement = one.statement();
        SameDayResult alone = statement == null ? null : statement.alone();
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("setting", column(one.plan().setting().key()));
        entry.put("from", value(one.plan().a()));
        entry.put("to", value(one.plan().b()));
        entry.put("flights_each", one.plan().perSide());
        entry.put("order", one.plan().drawnOrder());
        entry.put("seed", one.plan().seed());
        entry.put("opened_at", trial.openedAt().toString());
        entry.put(
                "judged_at", trial.judgedAt() == null ? null : trial.judgedAt().toString());
        entry.put("flown", one.state().flown());
        entry.put("ended_early", !one.isOpen() && (!one.state().isComplete() || trial.endedWhy() != null));
        entry.put("ended_why", trial.endedWhy() == null ? "" : trial.endedWhy());
        entry.put("effect_percent", alone == null ? null : Double.valueOf(alone.effectPercent()));
        entry.put("low_percent", alone == null ? null : alone.lowPercent());
        entry.put("high_percent", alone == null ? null : alone.highPercent());
        entry.put("sentences", statement == null ? one.state().sentences() : statement.sentences());
        if (one.isOpen()) {
            entry.put("missing", "The trial is open: nothing is told before it is judged.");
        } else if (alone == null) {
            entry.put("missing", "No day holds a clean flight with each value and everything else equal.");
        } else if (alone.low() == null) {
            entry.put("missing", "Too few flights for an interval.");
        }
        return entry;
    }
}
