package org.rafterbook.review;

import org.jspecify.annotations.Nullable;

/**
 * What flights of one day, alike in everything else, say about two values of a setting.
 *
 * @param effect logarithm of the ratio of durations, second value over first
 * @param se its standard error; null where each day holds only one flight of each value
 * @param low lower end of the 90 % interval; null with {@code se}
 * @param high upper end of the 90 % interval; null with {@code se}
 * @param degrees degrees of freedom of the interval
 * @param p two-sided probability of at least this difference if the labels had been dealt by chance within the days
 * @param everyArrangement true where {@code p} counts all arrangements, false where it rests on 10 000 random ones
 * @param flightsFrom flights used with the first value
 * @param flightsTo flights used with the second value
 * @param days days used
 * @param orderNotMixed true where on every day all flights of one value came before all of the other
 */
public record SameDayResult(
        double effect,
        @Nullable Double se,
        @Nullable Double low,
        @Nullable Double high,
        int degrees,
        double p,
        boolean everyArrangement,
        int flightsFrom,
        int flightsTo,
        int days,
        boolean orderNotMixed) {

    /** The effect in per cent of duration. */
    public double effectPercent() {
        return Percent.of(effect);
    }

    /** Lower end of the 90 % interval in per cent of duration. */
    public @Nullable Double lowPercent() {
        return low == null ? null : Double.valueOf(Percent.of(low));
    }

    /** Upper end of the 90 % interval in per cent of duration. */
    public @Nullable Double highPercent() {
        return high == null ? null : Double.valueOf(Percent.of(high));
    }
}
