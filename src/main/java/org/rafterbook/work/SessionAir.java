package org.rafterbook.work;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.MoistAir;
import org.rafterbook.units.UserError;

/** The air of one session, asked at the moment of a flight. */
final class SessionAir {

    /** Relative humidity taken where nobody measured it; results that rest on it are marked. */
    private static final double ASSUMED_HUMIDITY = 0.5;

    private final List<AirReading> readings;

    SessionAir(List<AirReading> readings) {
        this.readings = readings;
    }

    /** Density of the air, kg/m3; null where temperature or pressure were not noted or cannot be. */
    @Nullable
    Double densityKgM3(@Nullable Instant at) {
        Double temperature = nearest(at, AirReading::temperatureK);
        Double pressure = nearest(at, AirReading::pressurePa);
        if (temperature == null || pressure == null) {
            return null;
        }
        Double humidity = nearest(at, AirReading::humidity);
        try {
            return MoistAir.densityKgPerM3(temperature, pressure, humidity == null ? ASSUMED_HUMIDITY : humidity);
        } catch (UserError outside) {
            return null;
        }
    }

    boolean humidityAssumed() {
        return readings.stream().allMatch(r -> r.humidity() == null);
    }

    /** The value noted nearest in time; the first of the day where no time is known. */
    private @Nullable Double nearest(@Nullable Instant at, Function<AirReading, @Nullable Double> read) {
        Double best = null;
        Duration apart = null;
        for (AirReading reading : readings) {
            Double value = read.apply(reading);
            if (value == null) {
                continue;
            }
            Instant noted = reading.at();
            Duration away = at == null || noted == null
                    ? null
                    : Duration.between(noted, at).abs();
            boolean nearer = away != null && (apart == null || away.compareTo(apart) < 0);
            if (best == null || nearer) {
                best = value;
                apart = away;
            }
        }
        return best;
    }
}
