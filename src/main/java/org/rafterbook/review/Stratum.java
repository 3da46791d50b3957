package org.rafterbook.review;

import java.util.Map;
import java.util.TreeMap;

/**
 * What flights must share to be compared with each other: the day, the build, the share of the motor and every other
 * setting.
 */
record Stratum(String sessionId, int build, double partialFraction, Map<String, String> otherSettings) {

    static Stratum of(ReviewFlight flight, String setting) {
        Map<String, String> others = new TreeMap<>();
        flight.settings().forEach((key, level) -> {
            if (!key.equals(setting)) {
                others.put(key, level.key());
            }
        });
        return new Stratum(flight.sessionId(), flight.build(), flight.motor().partialFraction(), others);
    }
}
