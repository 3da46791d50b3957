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
 * @param ownNeutralPointM neutral point by the flyer's own formula, m aft of the origin; null where none was typed
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
        @Nullable Double ownNeutralPointM,
        boolean sketch,
        Instant madeAt) {

    /** The same version with other geometry and the digest that goes with it. */
    public Version withGeometry(String newDigest, @Nullable String newGeometry) {
        return new Version(
                id,
                modelId,
                build,
                number,
                newDigest,
                newGeometry,
                markedGood,
                zeroShiftM,
                zeroShiftReason,
                ownNeutralPointM,
                sketch,
                madeAt);
    }

    /** The same version marked as well-behaved, or not. */
    public Version withMark(boolean good) {
        return with(good, zeroShiftM, zeroShiftReason, ownNeutralPointM, sketch);
    }

    /** The same version with its neutral point moved, m, and why; both null takes the shift away. */
    public Version withZero(@Nullable Double shiftM, @Nullable String reason) {
        return with(markedGood, shiftM, reason, ownNeutralPointM, sketch);
    }

    /** The same version with the neutral point of the flyer's own formula, m; null for none. */
    public Version withOwnNeutralPoint(@Nullable Double neutralPointM) {
        return with(markedGood, zeroShiftM, zeroShiftReason, neutralPointM, sketch);
    }

    /** The same version as one that is only looked at. */
    public Version asSketch() {
        return with(markedGood, zeroShiftM, zeroShiftReason, ownNeutralPointM, true);
    }

    /** The same version as one that flies. */
    public Version taken() {
        return with(markedGood, zeroShiftM, zeroShiftReason, ownNeutralPointM, false);
    }

    private Version with(
            boolean good,
            @Nullable Double shiftM,
            @Nullable String reason,
            @Nullable Double own,
            boolean onlySketched) {
        return new Version(
                id, modelId, build, number, digest, geometry, good, shiftM, reason, own, onlySketched, madeAt);
    }
}
