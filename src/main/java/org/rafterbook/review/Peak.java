package org.rafterbook.review;

import org.jspecify.annotations.Nullable;

/**
 * How high the model came, as recorded (not scaled to a full motor).
 *
 * @param lowM it came at least this high, m
 * @param highM it came at most this high, m; equal to {@code lowM} where the height was read
 * @param touchedM height of what it touched, m: it would have come at least that high
 */
public record Peak(
        @Nullable Double lowM,
        @Nullable Double highM,
        @Nullable Double touchedM) {

    /** Nobody looked. */
    public static final Peak UNKNOWN = new Peak(null, null, null);
}
