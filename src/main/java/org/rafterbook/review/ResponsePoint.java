package org.rafterbook.review;

/**
 * One flight as a response curve needs it, corrected for everything but the axis itself.
 *
 * @param flightId the flight
 * @param value where on the axis it flew, in the axis's unit
 * @param session the session it flew in
 * @param logDuration natural logarithm of the corrected duration in seconds; the estimated one of a flight cut short
 * @param atLeast true for a flight cut short, whose time is only estimated and so weighs less
 */
public record ResponsePoint(String flightId, double value, String session, double logDuration, boolean atLeast) {

    /** Weight of an estimated time against a measured one: chosen for the program, not from a publication. */
    static final double AT_LEAST_WEIGHT = 0.35;

    double weight() {
        return atLeast ? AT_LEAST_WEIGHT : 1;
    }
}
