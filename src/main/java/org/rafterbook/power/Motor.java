package org.rafterbook.power;

import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One rubber loop.
 *
 * @param loopLengthM length of the loop when tied (half the strip), m
 * @param massKg mass without knot and rings, kg
 * @param cutFrom motor this one was cut from
 * @param fraction part of a full motor, 1 for a full one
 * @param fate null while it is in use, else what became of it
 */
public record Motor(
        String id,
        String name,
        @Nullable String batchId,
        @Nullable Double loopLengthM,
        @Nullable Double massKg,
        @Nullable String cutFrom,
        double fraction,
        @Nullable LocalDate madeOn,
        @Nullable String fate,
        @Nullable String notes,
        Map<String, String> asTyped) {

    /** The same motor with what became of it, null for one in use. */
    public Motor withFate(@Nullable String became) {
        return new Motor(id, name, batchId, loopLengthM, massKg, cutFrom, fraction, madeOn, became, notes, asTyped);
    }
}
