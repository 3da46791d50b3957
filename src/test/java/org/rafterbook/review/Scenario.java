package org.rafterbook.review;

/**
 * How a simulated season goes; figures of ln duration unless said otherwise. All are assumptions of the simulation, not
 * measurements.
 *
 * @param changeAtStart chance of a change at the start of a session
 * @param changeWithin chance of a change before a flight, after two or more with the same settings
 * @param nothing share of changes without any effect
 * @param smallest smallest effect of the others
 * @param largest largest effect of the others
 * @param touched share of flights that touch
 * @param spoilt share of flights spoilt by 10 to 25 % that nobody flagged
 * @param memory correlation of neighbouring flights of a session
 * @param learning gain of the season that levels off
 * @param perFlight gain from flight to flight of a session
 */
record Scenario(
        String name,
        double changeAtStart,
        double changeWithin,
        double nothing,
        double smallest,
        double largest,
        double touched,
        double spoilt,
        double memory,
        double learning,
        double perFlight) {

    static final double FLIGHT_SD = 0.05;
    static final double DAY_SD = 0.035;
    static final double TREND_SD = 0.04;

    static final Scenario BASE = new Scenario("base", 0.30, 0.10, 0.35, 0.01, 0.08, 0.10, 0, 0, 0, 0);
    static final Scenario NULL = new Scenario("null", 0.30, 0.10, 1, 0, 0, 0.10, 0, 0, 0, 0);
    static final Scenario BETWEEN = new Scenario("between", 0.70, 0.01, 0.35, 0.01, 0.08, 0.10, 0, 0, 0, 0);
    static final Scenario TOUCH25 = new Scenario("touch25", 0.30, 0.10, 0.35, 0.01, 0.08, 0.25, 0, 0, 0, 0);
    static final Scenario BIG = new Scenario("big", 0.30, 0.10, 0.20, 0.08, 0.15, 0.10, 0, 0, 0, 0);
    static final Scenario MISSPEC = new Scenario("misspec", 0.30, 0.10, 0.35, 0.01, 0.08, 0.10, 0.05, 0.4, 0.06, 0.004);

    @Override
    public String toString() {
        return name;
    }
}
