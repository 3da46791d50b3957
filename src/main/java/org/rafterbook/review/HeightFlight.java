package org.rafterbook.review;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A flight on a full motor whose launch torque and peak height are known, the height at least within ends.
 *
 * @param torqueNm launch torque, N m
 * @param lowM it came, or would have come, at least this high, m; 0 where nothing is known from below
 * @param highM it came at most this high, m; infinite where it touched or nothing is known from above
 * @param touched true where it touched something, so that its own peak stays unknown
 */
record HeightFlight(
        double torqueNm, double lowM, double highM, boolean touched, String sessionId, Map<String, Level> settings) {

    /** Null where torque or height is unknown, or the motor was a part of a full one. */
    static @Nullable HeightFlight of(ReviewFlight flight) {
        Double torque = flight.motor().launchTorqueNm();
        Peak peak = flight.peak();
        if (torque == null || !(torque > 0) || flight.motor().isPartial()) {
            return null;
        }
        double low = peak.lowM() == null ? 0 : Math.max(peak.lowM(), 0);
        double high = peak.highM() == null ? Double.POSITIVE_INFINITY : peak.highM();
        boolean touched = peak.touchedM() != null;
        if (peak.touchedM() != null) {
            low = Math.max(low, peak.touchedM());
            high = Double.POSITIVE_INFINITY;
        }
        boolean nothing = low == 0 && Double.isInfinite(high);
        return nothing || !(high > 0) || low > high
                ? null
                : new HeightFlight(torque, low, high, touched, flight.sessionId(), flight.settings());
    }

    /** True where it reached this height for sure. */
    boolean reached(double heightM) {
        return lowM >= heightM;
    }

    /** True where it stayed below this height for sure, as one seen below a mark did that hangs there. */
    boolean stayedBelow(double heightM) {
        return highM <= heightM && !reached(heightM);
    }
}
