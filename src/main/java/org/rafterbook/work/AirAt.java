package org.rafterbook.work;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.AirReading;

/** The air a flight flew in. */
final class AirAt {

    private AirAt() {}

    /**
     * The last reading before the flight, else the first of the session; null where there is none.
     *
     * @param readings of the flight's session in time order
     * @param launchedAt null where only the day is known
     */
    static @Nullable AirReading of(List<AirReading> readings, @Nullable Instant launchedAt) {
        AirReading found = readings.isEmpty() ? null : readings.get(0);
        for (AirReading reading : readings) {
            Instant at = reading.at();
            if (launchedAt != null && (at == null || !at.isAfter(launchedAt))) {
                found = reading;
            }
        }
        return found;
    }
}
