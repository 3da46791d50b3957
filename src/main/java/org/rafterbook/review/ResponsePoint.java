package org.rafterbook.review;

/**
 * One flight as a response curve needs it, corrected for everything but the axis itself.
 *
 * @param flightId the flight
 * @param value where on the axis it flew, in the axis's unit
 * @param session the session it flew in
 * @param logDuration natural logarithm of the corrected duration in seconds; the estimated one of a flight cut short
 * @param atLeast true for a flight cut short, whose time is only estimated and so weighs less
 * @param trust what its time weighs in the effects model, at most 1 and near 0 for one far off all the others: what
 *     hardly counts there must not bend a curve here
 */
public record ResponsePoint(
        String flightId, double value, String session, double logDuration, boolean atLeast, double trust) {

    /** Weight of an estimated time against a measured one: chosen for the program, not from a publication. */
    static final double AT_LEAST_WEIGHT = 0.35;

    /** A flight that is as good as any. */
    public ResponsePoint(String flightId, double value, String session, double logDuration, boolean atLeast) {
        this(flightId, value, session, logDuration, atLeast, 1);
    }

    /** The same flight at its place on another scale. */
    ResponsePoint at(double place) {
        return new ResponsePoint(flightId, place, session, logDuration, atLeast, trust);
    }

    double weight() {
        return trust * (atLeast ? AT_LEAST_WEIGHT : 1);
    }
}
