package org.rafterbook.review;

import org.hipparchus.distribution.continuous.GammaDistribution;
import org.rafterbook.units.Counted;

/**
 * How often something happened a flight, with the exact 90 % interval of a Poisson count (Garwood 1936, Biometrika
 * 28:437).
 *
 * @param count how often it happened
 * @param flights in how many flights it was counted
 * @param low lower end of the interval, a flight; 0 where no flight was counted
 * @param high upper end of the interval, a flight; 0 where no flight was counted
 */
public record Rate(int count, int flights, double low, double high) {

    /** The rate with its 90 % interval. */
    public static Rate of(int count, int flights) {
        return of(count, flights, 0.90);
    }

    /** The rate with an interval of another coverage. */
    static Rate of(int count, int flights, double coverage) {
        if (count < 0 || flights < 0) {
            throw new IllegalArgumentException(count + " in " + Counted.of(flights, "flight"));
        }
        if (flights == 0) {
            return new Rate(0, 0, 0, 0);
        }
        double tail = (1 - coverage) / 2;
        double low = count == 0 ? 0 : new GammaDistribution(count, 1).inverseCumulativeProbability(tail);
        double high = new GammaDistribution(count + 1.0, 1).inverseCumulativeProbability(1 - tail);
        return new Rate(count, flights, low / flights, high / flights);
    }

    public boolean isKnown() {
        return flights > 0;
    }

    /** A flight; 0 where no flight was counted. */
    public double perFlight() {
        return flights == 0 ? 0 : (double) count / flights;
    }

    /** A rate with as many decimals as show that it is not 0: 1.3, 0.04, 0.008. */
    public static String figure(double rate) {
        return Figures.value(rate, rate == 0 || rate >= 0.1 ? 0.1 : rate >= 0.01 ? 0.01 : 0.001);
    }

    /** Such as "0.4 a flight (0.2 to 0.9), 4 in 10 flights". */
    public String words() {
        return flights == 0
                ? "not counted"
                : figure(perFlight()) + " a flight (" + figure(low) + " to " + figure(high) + "), " + count + " in "
                        + Counted.of(flights, "flight");
    }
}
