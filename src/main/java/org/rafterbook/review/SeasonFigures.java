package org.rafterbook.review;

import org.jspecify.annotations.Nullable;

/**
 * What a season's flights say beside the changes.
 *
 * @param flightScatter standard deviation from flight to flight on one day, of the logarithm of duration
 * @param dayScatter standard deviation from day to day
 * @param levelScale typical size tau of a change's effect
 * @param trend drift over the whole season whatever was changed; null where all was flown on one date
 * @param turnsSlope per cent of duration per per cent of turns; null where turns are unknown or never differed
 */
public record SeasonFigures(
        double flightScatter,
        double dayScatter,
        double levelScale,
        @Nullable Estimate trend,
        @Nullable Estimate turnsSlope) {}
