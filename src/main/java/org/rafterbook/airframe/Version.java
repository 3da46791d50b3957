package org.rafterbook.airframe;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Model, build and all settings: what flew. Equal settings are the same version, whenever they come back.
 *
 * @param number counts the model's versions from 1
 * @param digest of model, build, settings and the geometry they do not set; unique
 * @param geometry airframe sheet (JSON) with the settings applied, null where the model has none
 * @param markedGood marked by the flyer as well-behaved
 * @param zeroShiftM correction of the neutral point from a version the flyer knows to be neutral, m
 * @param sketch made on the Bench and never flown
 */
public record Version(
        String id,
        String modelId,
        int build,
        int number,
        String digest,
        @Nullable String geometry,
        boolean markedGood,
        @Nullable Double zeroShiftM,
        @Nullable String zeroShiftReason,
        boolean sketch,
        Instant madeAt) {}
