package org.rafterbook.power;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Turns on the motor and torque, N m, at one moment of a wind. */
public record WindReading(
        String id,
        String windId,
        int ordinal,
        WindPhase phase,
        double turns,
        @Nullable Double torqueNm,
        @Nullable Instant at,
        Map<String, String> asTyped) {}
