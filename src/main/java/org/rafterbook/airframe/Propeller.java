package org.rafterbook.airframe;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A propeller by its own name; diameter and pitch in m, mass in kg. */
public record Propeller(
        String id,
        String name,
        @Nullable Double diameterM,
        @Nullable Double pitchM,
        @Nullable Double massKg,
        @Nullable String notes,
        Map<String, String> asTyped) {}
