package org.rafterbook.flight;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A planned comparison of two values of one setting.
 *
 * @param numberA first value in SI, or null where the setting is a word
 * @param perSide flights planned for each value
 * @param seed the order was drawn with
 * @param drawnOrder the order drawn, letters A and B
 * @param judgedAt when it was judged, null while open
 * @param endedWhy what the flyer said on ending it before all were flown
 */
public record Trial(
        String id,
        String modelId,
        String settingId,
        @Nullable Double numberA,
        @Nullable String wordA,
        @Nullable Double numberB,
        @Nullable String wordB,
        int perSide,
        long seed,
        String drawnOrder,
        Instant openedAt,
        @Nullable Instant judgedAt,
        @Nullable String endedWhy) {

    /** The same comparison of other values, each a number in SI or a word. */
    public Trial comparing(
            @Nullable Double newA, @Nullable String newWordA, @Nullable Double newB, @Nullable String newWordB) {
        return new Trial(
                id,
                modelId,
                settingId,
                newA,
                newWordA,
                newB,
                newWordB,
                perSide,
                seed,
                drawnOrder,
                openedAt,
                judgedAt,
                endedWhy);
    }

    /** The same comparison of the values of a setting that took the place of its own. */
    public Trial of(String setting) {
        return new Trial(
                id,
                modelId,
                setting,
                numberA,
                wordA,
                numberB,
                wordB,
                perSide,
                seed,
                drawnOrder,
                openedAt,
                judgedAt,
                endedWhy);
    }
}
