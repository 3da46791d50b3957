package org.rafterbook.flight;

import org.jspecify.annotations.Nullable;

/**
 * Something that happened in flight.
 *
 * @param atS second of the flight
 * @param value lap time s, height m, or what else the kind measures
 * @param markId mark of the venue that was touched or passed
 */
public record FlightEvent(
        String id,
        String flightId,
        FlightEventKind kind,
        @Nullable Double atS,
        @Nullable Double value,
        @Nullable String markId,
        @Nullable String notes) {}
