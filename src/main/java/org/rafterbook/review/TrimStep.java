package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * One occasion on which a model was set from one combination of settings directly to another.
 *
 * @param before setting key to value before
 * @param after setting key to value after
 */
public record TrimStep(Map<String, Level> before, Map<String, Level> after) {

    public TrimStep {
        before = Collections.unmodifiableMap(new TreeMap<>(before));
        after = Collections.unmodifiableMap(new TreeMap<>(after));
    }

    /** Keys of the settings recorded on both sides that differ, sorted. */
    public List<String> changed() {
        return before.keySet().stream()
                .filter(key -> after.containsKey(key) && !from(key).same(to(key)))
                .toList();
    }

    /** The steps between riggings in the order they were made. */
    public static List<TrimStep> between(List<Map<String, Level>> riggings) {
        List<TrimStep> steps = new ArrayList<>();
        for (int i = 1; i < riggings.size(); i++) {
            TrimStep step = new TrimStep(riggings.get(i - 1), riggings.get(i));
            if (!step.changed().isEmpty()) {
                steps.add(step);
            }
        }
        return List.copyOf(steps);
    }

    Level from(String setting) {
        return Objects.requireNonNull(before.get(setting));
    }

    Level to(String setting) {
        return Objects.requireNonNull(after.get(setting));
    }
}
