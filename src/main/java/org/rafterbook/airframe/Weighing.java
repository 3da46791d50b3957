package org.rafterbook.airframe;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A measurement of mass or balance: never a trim change.
 *
 * @param massKg all that was on the scale, kg
 * @param balanceM balance point aft of the origin, m
 * @param motorKg mass of the motor on board, 0 for bare, null where unknown, kg
 * @param motorAftM middle of that motor aft of the origin, m
 * @param accuracyM accuracy of the balance, m
 */
public record Weighing(
        String id,
        String modelId,
        String versionId,
        @Nullable Double massKg,
        @Nullable Double balanceM,
        @Nullable Double motorKg,
        @Nullable Double motorAftM,
        @Nullable Double accuracyM,
        Instant at,
        @Nullable String notes,
        Map<String, String> asTyped) {

    /** The same measurement of another version. */
    public Weighing of(String version) {
        return new Weighing(id, modelId, version, massKg, balanceM, motorKg, motorAftM, accuracyM, at, notes, asTyped);
    }
}
