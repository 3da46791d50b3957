package org.rafterbook.work;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Level;
import org.rafterbook.review.SameDayResult;
import org.rafterbook.review.SettingInfo;

/**
 * Two values of one setting that were changed directly into each other, and what the flights say about them.
 *
 * @param from the value flown first
 * @param fromVersion number of the version before, at the first such change
 * @param toVersion number of the version after
 * @param sameDay null where the two were not compared on one day
 * @param flightsFrom flights the answer rests on; where there is none, clean flights with the value
 * @param togetherWith labels of settings that changed with it each time; empty where it was once changed alone
 */
public record ReviewChange(
        SettingInfo setting,
        Level from,
        Level to,
        int fromVersion,
        int toVersion,
        Comparison comparison,
        @Nullable SameDayResult sameDay,
        int flightsFrom,
        int flightsTo,
        List<String> togetherWith,
        UpsetCount upsetsFrom,
        UpsetCount upsetsTo) {

    /** Below this standard error of ln duration the times are equal by rounding and say nothing of their spread. */
    private static final double NO_SPREAD = 1e-9;

    public ReviewChange {
        togetherWith = List.copyOf(togetherWith);
    }

    /** Best guess, per cent of duration; null where the flights give none. */
    public @Nullable Double effectPercent() {
        return sameDay == null ? null : Double.valueOf(sameDay.effectPercent());
    }

    /** Lower end of the 90 % interval, per cent of duration. */
    public @Nullable Double lowPercent() {
        return hasSpread() && sameDay != null ? sameDay.lowPercent() : null;
    }

    /** Upper end of the 90 % interval, per cent of duration. */
    public @Nullable Double highPercent() {
        return hasSpread() && sameDay != null ? sameDay.highPercent() : null;
    }

    /** Probability that the second value flies longer, by Student's distribution about the difference. */
    public @Nullable Double probabilityRaised() {
        if (sameDay == null || sameDay.se() == null || !hasSpread()) {
            return null;
        }
        return new TDistribution(sameDay.degrees()).cumulativeProbability(sameDay.effect() / sameDay.se());
    }

    private boolean hasSpread() {
        return sameDay != null && sameDay.se() != null && sameDay.se() > NO_SPREAD;
    }

    public int commonDays() {
        return sameDay == null ? 0 : sameDay.days();
    }

    public EffectWord word() {
        return comparison == Comparison.MOVED_TOGETHER
                ? EffectWord.CANNOT_BE_TOLD_APART
                : EffectWord.of(probabilityRaised());
    }
}
