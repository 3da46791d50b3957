package org.rafterbook.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Level;
import org.rafterbook.review.SameDayResult;

/** The review for the command line: as the value of one JSON document, or as text to read. */
public final class ReviewAnswerText {

    private ReviewAnswerText() {}

    /**
     * The document as maps, lists, strings and numbers; unknown answers are null with a sentence under {@code missing}.
     */
    public static Map<String, @Nullable Object> document(List<ModelReview> answers) {
        List<Map<String, @Nullable Object>> models = new ArrayList<>();
        List<Map<String, @Nullable Object>> changes = new ArrayList<>();
        for (ModelReview answer : answers) {
            models.add(model(answer));
            answer.changes().forEach(c -> changes.add(change(answer, c)));
        }
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("models", models);
        document.put("changes", changes);
        return document;
    }

    private static Map<String, @Nullable Object> model(ModelReview answer) {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("model", answer.model().name());
        entry.put("flights", answer.counted());
        entry.put("at_least", answer.atLeast());
        entry.put("left_out", answer.leftOut().size());
        entry.put("waiting_for_trial", answer.waiting());
        entry.put("versions", answer.versions());
        entry.put("riggings", answer.riggings().size());
        entry.put("trim_changes", answer.trimChanges());
        return entry;
    }

    private static Map<String, @Nullable Object> change(ModelReview answer, ReviewChange change) {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("model", answer.model().name());
        entry.put("setting", change.setting().label());
        entry.put("from", value(change.from()));
        entry.put("to", value(change.to()));
        entry.put("unit", change.setting().unit());
        entry.put("comparison", change.comparison().word());
        entry.put("effect_percent", change.effectPercent());
        entry.put("low_percent", change.lowPercent());
        entry.put("high_percent", change.highPercent());
        entry.put("probability_raised", change.probabilityRaised());
        entry.put("word", change.word().word());
        entry.put("flights_from", change.flightsFrom());
        entry.put("flights_to", change.flightsTo());
        entry.put("common_days", change.commonDays());
        entry.put("together_with", change.togetherWith());
        SameDayResult sameDay = change.sameDay();
        entry.put("same_day_effect_percent", sameDay == null ? null : Double.valueOf(sameDay.effectPercent()));
        entry.put("same_day_low_percent", sameDay == null ? null : sameDay.lowPercent());
        entry.put("same_day_high_percent", sameDay == null ? null : sameDay.highPercent());
        entry.put("same_day_probability", sameDay == null ? null : Double.valueOf(sameDay.p()));
        entry.put("same_day_flights_from", sameDay == null ? null : Integer.valueOf(sameDay.flightsFrom()));
        entry.put("same_day_flights_to", sameDay == null ? null : Integer.valueOf(sameDay.flightsTo()));
        entry.put("same_day_days", sameDay == null ? null : Integer.valueOf(sameDay.days()));
        entry.put("order_not_mixed", sameDay == null ? null : Boolean.valueOf(sameDay.orderNotMixed()));
        entry.put("sentences", ReviewWords.sentences(change));
        String missing = ReviewWords.missing(change);
        if (missing != null) {
            entry.put(change.effectPercent() == null ? "missing" : "same_day_missing", missing);
        }
        return entry;
    }

    private static Object value(Level level) {
        return level.value() == null ? level.label() : level.value();
    }

    /** The same to read, model by model. */
    public static String text(List<ModelReview> answers) {
        StringBuilder text = new StringBuilder();
        for (ModelReview answer : answers) {
            if (text.length() > 0) {
                text.append('\n');
            }
            text.append(answer.model().name()).append('\n');
            ReviewWords.basis(answer).forEach(s -> text.append("  ").append(s).append('\n'));
            if (answer.changes().isEmpty()) {
                text.append("  No setting was changed yet, so there is nothing to compare.\n");
            }
            for (ReviewChange change : answer.changes()) {
                String lead = "- ";
                for (String sentence : ReviewWords.sentences(change)) {
                    text.append("  ").append(lead).append(sentence).append('\n');
                    lead = "  ";
                }
            }
        }
        return answers.isEmpty() ? "No flights yet: log one, or import a table.\n" : text.toString();
    }
}
