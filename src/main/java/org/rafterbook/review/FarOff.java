package org.rafterbook.review;

/**
 * A clean flight whose time lies far off what its settings, turns and day lead to: it hardly counts, and may be mistyped
 * or something else than a flight.
 *
 * @param flightId the flight
 * @param expectedS the time it was expected to have, s
 */
public record FarOff(String flightId, double expectedS) {

    /**
     * Flights that weigh less lie more than six of the errors' scales off; of good ones with Student's errors one in a
     * thousand does.
     */
    static final double LEAST_WEIGHT = 7.0 / (6 + 36);
}
