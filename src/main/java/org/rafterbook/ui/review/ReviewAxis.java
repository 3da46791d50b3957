package org.rafterbook.ui.review;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Level;
import org.rafterbook.review.SettingInfo;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewPoint;

/**
 * What times are drawn against.
 *
 * @param setting null for the stability margin
 */
record ReviewAxis(@Nullable SettingInfo setting) {

    static final ReviewAxis MARGIN = new ReviewAxis(null);

    /** The margin, then every setting that any flight carries. */
    static List<ReviewAxis> of(ModelReview answer) {
        List<ReviewAxis> settings = answer.input().settings().stream()
                .filter(s -> answer.points().stream()
                        .anyMatch(p -> p.flight().settings().containsKey(s.key())))
                .map(ReviewAxis::new)
                .toList();
        return java.util.stream.Stream.concat(java.util.stream.Stream.of(MARGIN), settings.stream())
                .toList();
    }

    /** Its name in a choice, such as "stability margin". */
    String name() {
        return setting == null ? "stability margin" : setting.label();
    }

    /** Name and unit at the axis's end. */
    String title() {
        String unit = setting == null ? "%" : setting.unit();
        return unit.isEmpty() ? name() : name() + ", " + unit;
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
