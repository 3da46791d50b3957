package org.rafterbook.work;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.ChangeEffect;
import org.rafterbook.review.Comparison;
import org.rafterbook.review.HandlingSummary;
import org.rafterbook.review.Level;
import org.rafterbook.review.SameDayResult;
import org.rafterbook.review.SettingInfo;
import org.rafterbook.review.Word;

/**
 * Two values of one setting that were changed directly into each other, and what the flights say about them.
 *
 * @param said what the estimates say
 * @param fromVersion number of the version before, at the first such change
 * @param toVersion number of the version after
 * @param togetherWith labels of what it moved together with
 * @param handlingFrom how the flights with the value flown first handled
 * @param handlingTo how those with the other handled
 */
public record ReviewChange(
        ChangeEffect said,
        int fromVersion,
        int toVersion,
        List<String> togetherWith,
        HandlingSummary handlingFrom,
        HandlingSummary handlingTo) {

    public ReviewChange {
        togetherWith = List.copyOf(togetherWith);
    }

    /** True where the other is the same joint change seen from another of the settings that moved. */
    boolean isToldWith(ReviewChange other) {
        return comparison() == Comparison.MOVED_TOGETHER
                && other.comparison() == Comparison.MOVED_TOGETHER
                && said.togetherWith().contains(other.setting().key())
                && other.said().togetherWith().contains(setting().key())
                && fromVersion == other.fromVersion
                && toVersion == other.toVersion
                && flightsFrom() == other.flightsFrom()
                && flightsTo() == other.flightsTo();
    }

    public SettingInfo setting() {
        return said.setting();
    }

    /** The value flown first. */
    public Level from() {
        return said.from();
    }

    public Level to() {
        return said.to();
    }

    public Comparison comparison() {
        return said.comparison();
    }

    /** The comparison that fits nothing; null where no day holds both with all else equal. */
    public @Nullable SameDayResult sameDay() {
        return said.sameDay();
    }

    public Word word() {
        return said.word();
    }

    /** Clean flights with the value flown first. */
    public int flightsFrom() {
        return said.flightsFrom();
    }

    public int flightsTo() {
        return said.flightsTo();
    }

    public int commonDays() {
        return said.commonDays();
    }

    /** Best guess, per cent of duration, of both together where they moved together; null where there is none. */
    public @Nullable Double effectPercent() {
        return said.effect() == null ? null : Double.valueOf(said.effect().effectPercent());
    }

    /** Lower end of the 90 % interval, per cent of duration. */
    public @Nullable Double lowPercent() {
        return said.effect() == null ? null : Double.valueOf(said.effect().lowPercent());
    }

    /** Upper end of the 90 % interval, per cent of duration. */
    public @Nullable Double highPercent() {
        return said.effect() == null ? null : Double.valueOf(said.effect().highPercent());
    }

    /** Probability that the second value flies longer. */
    public @Nullable Double probabilityRaised() {
        return said.effect() == null ? null : Double.valueOf(said.effect().probabilityRaised());
    }
}
