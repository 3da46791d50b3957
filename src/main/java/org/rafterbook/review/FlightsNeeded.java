package org.rafterbook.review;

import java.util.OptionalInt;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How many flights show a gain, before there is a log: two settings flown alternately on the same day or days, judged by
 * whether the lower end of the 90 % interval lies above 0.
 *
 * <p>Normal errors of log duration with {@code sigma^2 = ln(1 + scatter^2)} and the noncentral t distribution (formula
 * basis Julious 2004, Statistics in Medicine 23:1921, from memory of the source).
 */
public final class FlightsNeeded {

    /** More flights for each setting than this nobody flies. */
    static final int AT_MOST = 1000;

    /** The scatter of one flight taken where there is no log yet. */
    public static final double USUAL_SCATTER = 0.05;

    /** The scatter of a whole day taken where there is no log yet. */
    public static final double USUAL_DAY_SCATTER = 0.035;

    private static final double ONE_SIDED = 0.95;

    /** The gain named where a trial is planned. */
    private static final double GAIN_NAMED = 0.05;

    private FlightsNeeded() {}

    /**
     * Chance that the flights show a gain that is there.
     *
     * @param perSetting flights with each setting, at least 2
     * @param gain true gain as a fraction of the time, 0.05 for 5 %
     * @param scatter standard deviation of one flight's time as a fraction of it
     */
    public static double power(int perSetting, double gain, double scatter) {
        double degrees = 2.0 * perSetting - 2;
        double shift = Math.log1p(gain) / (sigma(scatter) * Math.sqrt(2.0 / perSetting));
        return NoncentralT.above(quantile(degrees), degrees, shift);
    }

    /** Flights with each setting that show this gain with this chance; empty where more than 1000 are needed. */
    public static OptionalInt perSetting(double gain, double scatter, double chance) {
        if (!(gain > 0) || power(AT_MOST, gain, scatter) < chance) {
            return OptionalInt.empty();
        }
        int low = 1;
        int high = AT_MOST;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (power(middle, gain, scatter) >= chance) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalInt.of(high);
    }

    /** Expected half-width of the 90 % interval of the difference, in log duration. */
    public static double halfWidth(int perSetting, double scatter) {
        return quantile(2.0 * perSetting - 2) * sigma(scatter) * Math.sqrt(2.0 / perSetting);
    }

    /**
     * Smallest gain shown with a chance of 80 % where each setting has days of its own.
     *
     * @param daysEach days for each setting, at least 2: from one day each nothing can be told
     * @param flightsADay flights on each day
     * @param scatter standard deviation of one flight's time as a fraction of it
     * @param dayScatter standard deviation of a whole day as a fraction of the time
     */
    public static double smallestAcrossDays(int daysEach, int flightsADay, double scatter, double dayScatter) {
        double sigma = sigma(scatter);
        double day = sigma(dayScatter);
        double error = Math.sqrt((day * day + sigma * sigma / flightsADay) * 2 / daysEach);
        double degrees = 2.0 * daysEach - 2;
        double low = 0;
        double high = 5;
        while (high - low > 1e-7) {
            double middle = 0.5 * (low + high);
            if (NoncentralT.above(quantile(degrees), degrees, middle / error) >= 0.80) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Math.expm1(high);
    }

    /** What a planned change takes when both settings are flown alternately on one day. */
    public static String sentence(double gain, double scatter) {
        String begin = "To show a gain of " + Percent.plain(100 * gain) + " with times that scatter by "
                + Percent.scatter(scatter) + ", ";
        OptionalInt each = perSetting(gain, Percent.asPrinted(scatter), 0.80);
        return each.isEmpty()
                ? begin + "more than " + AT_MOST + " flights with each setting would be needed."
                : begin + "fly about " + each.getAsInt() + " + " + each.getAsInt()
                        + " alternately on one day (8 chances in 10).";
    }

    /** What so many flights with each of two values will show, from the scatter of times alone. */
    public static String trialSentence(int perSide, double scatter) {
        return perSide + " + " + perSide + " flights on one day tell a difference to "
                + Percent.halfWidth(halfWidth(perSide, scatter)) + ", times taken to scatter by "
                + Percent.scatter(scatter) + "; a gain of " + Percent.plain(100 * GAIN_NAMED)
                + " shows with a chance of " + Figures.odds(power(perSide, GAIN_NAMED, scatter)) + ".";
    }

    /** Why both settings belong on one day, for wherever a change is planned. */
    public static String alternateSentence(double scatter, double dayScatter) {
        return "Alternate the two settings on the same day: with three days for each, only a gain of "
                + Percent.plain(Math.max(1, 100 * smallestAcrossDays(3, 6, scatter, dayScatter)))
                + " or more would show, however many flights a day. One day each tells nothing.";
    }

    private static double quantile(double degrees) {
        return new TDistribution(degrees).inverseCumulativeProbability(ONE_SIDED);
    }

    private static double sigma(double scatter) {
        return Math.sqrt(Math.log1p(scatter * scatter));
    }
}
