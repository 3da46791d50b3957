package org.rafterbook.review;

/** The standard normal distribution, fast enough for mixtures of thousands of components. */
final class Normal {

    private static final double ROOT_TWO_PI = 2.5066282746310002;

    /** Hart et al. 1968, Computer Approximations, no. 5666: absolute error below 1e-15 (coefficients from memory). */
    private static final double[] ABOVE = {
        3.52624965998911e-02,
        0.700383064443688,
        6.37396220353165,
        33.912866078383,
        112.079291497871,
        221.213596169931,
        220.206867912376
    };

    private static final double[] BELOW = {
        8.83883476483184e-02,
        1.75566716318264,
        16.064177579207,
        86.7807322029461,
        296.564248779674,
        637.333633378831,
        793.826512519948,
        440.413735824752
    };

    private Normal() {}

    /** Probability of a value up to {@code z}. */
    static double cumulative(double z) {
        return cumulative(z, density(z));
    }

    /** The same where the density at {@code z} is at hand. */
    static double cumulative(double z, double density) {
        double u = Math.abs(z);
        double tail = u < 7.07106781186547
                ? density * ROOT_TWO_PI * polynomial(ABOVE, u) / polynomial(BELOW, u)
                // The upper tail as a continued fraction.
                : density / (u + 1 / (u + 2 / (u + 3 / (u + 4 / (u + 0.65)))));
        return z > 0 ? 1 - tail : tail;
    }

    static double density(double z) {
        return StrictMath.exp(-0.5 * z * z) / ROOT_TWO_PI;
    }

    private static double polynomial(double[] coefficients, double u) {
        double sum = 0;
        for (double c : coefficients) {
            sum = sum * u + c;
        }
        return sum;
    }
}
