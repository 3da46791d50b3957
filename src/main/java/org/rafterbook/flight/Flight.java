package org.rafterbook.flight;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One timed flight. Its row is written at launch and updated at landing.
 *
 * @param riggingId null until the flight is given a model
 * @param ordinal order within the session, from 1
 * @param launchNoOfWind 1 for the first launch on its wind, 2 for a relaunch
 * @param launchedAt null where only the time aloft is known
 * @param durationS time aloft, s; null while in the air
 * @param clockDoubtS monotonic minus wall clock, s, where they differ by more than 0.2 s
 * @param peakLowM peak height at least, m
 * @param peakHighM peak height at most, m
 * @param turnsLeft motor turns left
 * @param partialFraction part of a full motor flown with a spacer, 1 for a full one
 * @param leftOutWhy why the flight is flagged to be left out, null where it is not
 * @param leftOutAt when it was flagged
 * @param leftOutBeforeTime true where it was flagged before its time was known
 */
public record Flight(
        String id,
        String sessionId,
        @Nullable String riggingId,
        @Nullable String windId,
        int ordinal,
        int launchNoOfWind,
        @Nullable Instant launchedAt,
        @Nullable Instant landedAt,
        @Nullable Double durationS,
        @Nullable DurationSource durationSource,
        @Nullable Double clockDoubtS,
        @Nullable Ending ending,
        @Nullable CutShort cutShort,
        @Nullable Double peakLowM,
        @Nullable Double peakHighM,
        @Nullable Double turnsLeft,
        double partialFraction,
        @Nullable Recovered recovered,
        @Nullable Integer stalls,
        @Nullable String leftOutWhy,
        @Nullable String leftOutBy,
        @Nullable Instant leftOutAt,
        @Nullable Boolean leftOutBeforeTime,
        @Nullable String notes,
        Map<String, String> asTyped) {}
