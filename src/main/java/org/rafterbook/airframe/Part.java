package org.rafterbook.airframe;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A wing, tailplane, stick, boom or propeller with its measured mass, kg; parts may serve two models. */
public record Part(
        String id,
        String name,
        @Nullable Double massKg,
        @Nullable String notes,
        Map<String, String> asTyped) {}
