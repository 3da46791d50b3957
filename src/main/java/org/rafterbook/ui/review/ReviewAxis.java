package org.rafterbook.ui.review;

import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Answer;
import org.rafterbook.review.Level;
import org.rafterbook.review.Response;
import org.rafterbook.review.SettingInfo;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewPoint;

/**
 * What times and handling are shown against.
 *
 * @param setting null for the stability margin
 */
record ReviewAxis(@Nullable SettingInfo setting) {

    static final ReviewAxis MARGIN = new ReviewAxis(null);

    /** The margin, then every setting that any flight carries. */
    static List<ReviewAxis> of(ModelReview answer) {
        return Stream.concat(
                        Stream.of(MARGIN),
                        answer.input().settings().stream()
                                .filter(s -> answer.points().stream()
                                        .anyMatch(p -> p.flight().settings().containsKey(s.key())))
                                .map(ReviewAxis::new))
                .toList();
    }

    /** The margin where any flight tells it or may still, else the setting that was changed first. */
    static ReviewAxis first(ModelReview answer) {
        boolean told = answer.marginsOpen()
                || answer.points().stream().anyMatch(p -> p.flight().marginPercent() != null);
        return told || answer.changes().isEmpty()
                ? MARGIN
                : new ReviewAxis(answer.changes().get(0).setting());
    }

    /** Its name in a choice, such as "stability margin". */
    String name() {
        return setting == null ? "stability margin" : setting.label();
    }

    String unit() {
        return setting == null ? "%" : setting.unit();
    }

    /** Why no flight can be drawn along it. */
    String nothing(ModelReview answer) {
        if (!isMargin()) {
            return "No flight that counts tells its " + name() + ".";
        }
        return answer.marginsOpen()
                ? "The margins are being computed."
                : "No flight has a margin: the model needs its geometry and balance, on the Bench or from an airframe"
                        + " sheet. V draws the times against a setting.";
    }

    /** Where a flight lies, null where it does not carry the value or that is a word. */
    @Nullable
    Double at(ReviewPoint point) {
        if (setting == null) {
            return point.flight().marginPercent();
        }
        Level level = point.flight().settings().get(setting.key());
        return level == null ? null : level.value();
    }

    /** The word a flight stands at, null for numbers. */
    @Nullable
    String word(ReviewPoint point) {
        Level level = setting == null ? null : point.flight().settings().get(setting.key());
        return level == null || level.value() != null ? null : level.label();
    }

    /** Every word flown, in order; empty where the values are numbers. */
    List<String> words(ModelReview answer) {
        return List.copyOf(new TreeSet<>(answer.points().stream()
                .map(this::word)
                .filter(Objects::nonNull)
                .toList()));
    }

    /** The curve along this axis, or why there is none; null before it is computed. */
    @Nullable
    Answer<Response> response(ModelReview answer) {
        return answer.plans() == null
                ? null
                : setting == null
                        ? answer.plans().margin()
                        : answer.plans().responses().get(setting.key());
    }

    boolean isMargin() {
        return setting == null;
    }

    /** True for the same quantity, whatever else is known of it. */
    boolean same(ReviewAxis other) {
        return Objects.equals(key(), other.key());
    }

    private @Nullable String key() {
        return setting == null ? null : setting.key();
    }
}
