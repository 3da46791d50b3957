package org.rafterbook.power;

import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A batch of rubber.
 *
 * @param widthM width of the strip as bought, m
 * @param turnsConstant batch's own K of {@code K L^1.5 / m^0.5}, in^-1.5 g^0.5, where the flyer has one
 */
public record RubberBatch(
        String id,
        String name,
        @Nullable LocalDate openedOn,
        @Nullable Double widthM,
        @Nullable Double turnsConstant,
        @Nullable String notes,
        Map<String, String> asTyped) {}
