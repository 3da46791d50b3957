package org.rafterbook.flight;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The air at one moment of a session: temperature K, relative humidity as a fraction, station pressure Pa.
 *
 * @param at null where only the day is known
 */
public record AirReading(
        String id,
        String sessionId,
        @Nullable Instant at,
        @Nullable Double temperatureK,
        @Nullable Double humidity,
        @Nullable Double pressurePa,
        @Nullable PressureSource pressureSource,
        Map<String, String> asTyped) {}
