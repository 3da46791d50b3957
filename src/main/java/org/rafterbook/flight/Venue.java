package org.rafterbook.flight;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A place to fly.
 *
 * @param siteHeightM height above the sea, m
 * @param officialHeightM ceiling height by the rules, m
 * @param usableHeightM height that can be flown under, m
 */
public record Venue(
        String id,
        String name,
        @Nullable Double siteHeightM,
        @Nullable Double officialHeightM,
        @Nullable Double usableHeightM,
        @Nullable String notes,
        Map<String, String> asTyped) {}
