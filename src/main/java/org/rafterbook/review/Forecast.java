package org.rafterbook.review;

/**
 * What a trial would show, before it is flown.
 *
 * @param perSide flights planned with each value
 * @param sd standard deviation of the effect on log duration that would be left afterwards
 * @param chanceRaised chance that the lower end of the 90 % interval then lies above 0
 * @param chanceLowered chance that the upper end of the 90 % interval then lies below 0
 * @param worth expected gain of log duration from choosing by the trial's answer instead of by what is known now
 * @param widest the largest difference of log duration that the 90 % interval leaves open now
 */
public record Forecast(int perSide, double sd, double chanceRaised, double chanceLowered, double worth, double widest) {

    private static final double NINETY = 1.645;

    /** Below this chance of a clear result nobody should be sent to fly: 1 in 20. */
    private static final double LITTLE_CHANCE = 0.05;

    /** Half-width of the 90 % interval that would be left, in log duration. */
    public double halfWidth() {
        return NINETY * sd;
    }

    /** Chance of a clear result in either direction. */
    public double chanceClear() {
        return chanceRaised + chanceLowered;
    }

    /** True where so few flights would hardly tell. */
    boolean hasLittleChance() {
        return chanceClear() < LITTLE_CHANCE;
    }

    /**
     * True where one is there, within what the flights could show: the difference is known to be smaller than the flyer cares
     * about, they would hardly tell it, and choosing by them gains less than is worth trying.
     */
    boolean isSettled(double difference) {
        return widest <= difference && hasLittleChance() && worth < NextTry.WORTHWHILE;
    }

    /** The forecast in words. */
    public String sentence() {
        return perSide + " + " + perSide + " flights on one day would bring the interval to "
                + Percent.halfWidth(halfWidth()) + "; chance of a clear result: " + Figures.odds(chanceClear())
                + ".";
    }

    /**
     * The forecast from the effect as it is known now and the spread that will be left: the estimate afterwards is normal
     * about the one now, with the variance that the flights take away.
     */
    static Forecast of(int perSide, double mean, double sdNow, double sdThen) {
        double moves = Math.sqrt(Math.max(sdNow * sdNow - sdThen * sdThen, 1e-12));
        double z = mean / moves;
        return new Forecast(
                perSide,
                sdThen,
                Normal.cumulative((mean - NINETY * sdThen) / moves),
                Normal.cumulative((-mean - NINETY * sdThen) / moves),
                moves * Normal.density(z) + mean * Normal.cumulative(z) - Math.max(mean, 0),
                Math.abs(mean) + NINETY * sdNow);
    }

    /** The same where the flights stand on their own: as many with each value, on one day, with this scatter. */
    static Forecast alone(int perSide, double mean, double sdNow, double flightVariance) {
        double precision = 1 / (sdNow * sdNow) + perSide / (2 * flightVariance);
        return of(perSide, mean, sdNow, 1 / Math.sqrt(precision));
    }
}
