package org.rafterbook.review;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a season says about one pair of values of a setting that were changed directly into each other.
 *
 * @param setting the setting
 * @param from the value flown first
 * @param to the other
 * @param comparison how far they were compared
 * @param effect the effect of going from one to the other; where they moved together with something, the joint effect;
 *     null where nothing can be told, or before it is computed
 * @param word what is said of it
 * @param flightsFrom clean flights at the first value
 * @param flightsTo clean flights at the other
 * @param atLeastFrom flights at the first value that were cut short
 * @param atLeastTo flights at the other that were cut short
 * @param daysFrom days with clean flights at the first value
 * @param daysTo days with clean flights at the other
 * @param commonDays days with clean flights at both
 * @param togetherWith keys of the settings it moved together with; a motor, build or date is named in words
 * @param sameDay the same-day comparison; null where the two were not compared on one day
 * @param probabilityBest probability that it raised the time most of all changes judged, never above 0.9; null where it
 *     was not judged by itself
 * @param moreTurns logarithm of the ratio of mean turns, the other over the first; null where no turns are known
 * @param confirmation whether a later session holds both values; null where nothing is claimed
 * @param ceilingLimited true where a third or more of the flights at one of the values were cut short by a touch
 * @param sentences what is said of it, the statement first
 */
public record ChangeEffect(
        SettingInfo setting,
        Level from,
        Level to,
        Comparison comparison,
        @Nullable Estimate effect,
        Word word,
        int flightsFrom,
        int flightsTo,
        int atLeastFrom,
        int atLeastTo,
        int daysFrom,
        int daysTo,
        int commonDays,
        List<String> togetherWith,
        @Nullable SameDayResult sameDay,
        @Nullable Double probabilityBest,
        @Nullable Double moreTurns,
        @Nullable Confirmation confirmation,
        boolean ceilingLimited,
        List<String> sentences) {

    public ChangeEffect {
        togetherWith = List.copyOf(togetherWith);
        sentences = List.copyOf(sentences);
    }

    /** The statement with its number, interval and flights. */
    public String statement() {
        return sentences.get(0);
    }

    ChangeEffect with(List<String> said) {
        return new ChangeEffect(
                setting,
                from,
                to,
                comparison,
                effect,
                word,
                flightsFrom,
                flightsTo,
                atLeastFrom,
                atLeastTo,
                daysFrom,
                daysTo,
                commonDays,
                togetherWith,
                sameDay,
                probabilityBest,
                moreTurns,
                confirmation,
                ceilingLimited,
                said);
    }
}
