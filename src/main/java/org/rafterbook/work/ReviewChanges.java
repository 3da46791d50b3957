package org.rafterbook.work;

import java.util.List;
import java.util.Map;
import org.rafterbook.review.ChangeEffect;
import org.rafterbook.review.HandlingSummary;
import org.rafterbook.review.Level;
import org.rafterbook.review.ReviewAnswer;
import org.rafterbook.review.ReviewInput;
import org.rafterbook.review.SettingInfo;

/** Puts beside what the estimates say of each change what a screen shows with it: versions, labels, handling. */
final class ReviewChanges {

    private static final Level NOT_RECORDED = new Level("\u0000", null, "");

    private final List<Rigged> strip;
    private final ReviewInput input;

    ReviewChanges(List<Rigged> strip, ReviewInput input) {
        this.strip = strip;
        this.input = input;
    }

    List<ReviewChange> of(ReviewAnswer answer) {
        return answer.changes().stream().map(this::change).toList();
    }

    private ReviewChange change(ChangeEffect said) {
        String setting = said.setting().key();
        int fromVersion = first(setting, said.from());
        int toVersion = first(setting, said.to());
        for (int i = strip.size() - 1; i > 0; i--) {
            Level before = level(strip.get(i - 1), setting);
            Level after = level(strip.get(i), setting);
            if (before.same(said.from()) && after.same(said.to())) {
                fromVersion = strip.get(i - 1).version().number();
                toVersion = strip.get(i).version().number();
            } else if (before.same(said.to()) && after.same(said.from())) {
                fromVersion = strip.get(i).version().number();
                toVersion = strip.get(i - 1).version().number();
            }
        }
        return new ReviewChange(
                said,
                fromVersion,
                toVersion,
                said.togetherWith().stream().map(this::label).toList(),
                handling(setting, said.from()),
                handling(setting, said.to()));
    }

    /** The first version at a value, for one that was never changed directly into the other between flights told. */
    private int first(String setting, Level value) {
        return strip.stream()
                .filter(r -> level(r, setting).same(value))
                .findFirst()
                .orElse(strip.get(0))
                .version()
                .number();
    }

    private static Level level(Rigged rigged, String setting) {
        Map<String, Level> levels = ReviewLevels.of(rigged.settings(), rigged.values());
        return levels.getOrDefault(setting, NOT_RECORDED);
    }

    private String label(String name) {
        return input.settings().stream()
                .filter(s -> s.key().equals(name))
                .map(SettingInfo::label)
                .findFirst()
                .orElse(name);
    }

    private HandlingSummary handling(String setting, Level level) {
        return HandlingSummary.of(input.flights().stream()
                .filter(f -> {
                    Level flown = f.settings().get(setting);
                    return flown != null && flown.same(level);
                })
                .toList());
    }
}
