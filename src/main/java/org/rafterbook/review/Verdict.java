package org.rafterbook.review;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far a pair of values was compared and what can be told of it.
 *
 * @param comparison how it was compared
 * @param contrast the effect, or the joint effect, that can be told; null where none can
 * @param onOneDay true where the contrast can be told with every day's own level taken out
 * @param together what it moved together with
 */
@SuppressWarnings("ArrayRecordComponent") // a part of a computation, never compared
record Verdict(Comparison comparison, double @Nullable [] contrast, boolean onOneDay, List<Partner> together) {

    List<String> names() {
        return together.stream().map(Partner::name).toList();
    }

    static Verdict alone(Comparison comparison, double @Nullable [] contrast) {
        return new Verdict(comparison, contrast, comparison == Comparison.SAME_DAY, List.of());
    }
}
