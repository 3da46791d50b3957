package org.rafterbook.rules;

import org.jspecify.annotations.Nullable;

/**
 * The limits of a class as data, with rule book and year: rules change, and the flyer may edit them. Masses kg, lengths
 * m.
 *
 * @param minAirframeKg least mass without the motor
 * @param maxMotorKg greatest mass of the motor
 */
public record ClassSheet(
        String id,
        String name,
        String ruleBook,
        int year,
        @Nullable Double minAirframeKg,
        @Nullable Double maxMotorKg,
        @Nullable Double maxSpanM,
        @Nullable Double maxChordM,
        @Nullable Double maxTailSpanM,
        @Nullable Double maxPropellerM,
        @Nullable String notes) {

    /** The same sheet under an id. */
    public ClassSheet withId(String newId) {
        return new ClassSheet(
                newId,
                name,
                ruleBook,
                year,
                minAirframeKg,
                maxMotorKg,
                maxSpanM,
                maxChordM,
                maxTailSpanM,
                maxPropellerM,
                notes);
    }
}
