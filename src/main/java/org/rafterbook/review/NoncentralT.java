package org.rafterbook.review;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.Gamma;

/** Student's t with a shifted numerator, by integrating over the estimated standard deviation. */
final class NoncentralT {

    private static final int PANELS = 16;
    private static final int NODES = 20;

    /** Nodes and weights on -1..1. */
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(NODES);

    private NoncentralT() {}

    /**
     * Probability of a value above {@code t}: the expectation of {@code Phi(shift - t s)} where {@code degrees * s^2} is
     * chi-square.
     *
     * @param degrees degrees of freedom, at least 1
     * @param shift noncentrality
     */
    static double above(double t, double degrees, double shift) {
        double reach = 12 / Math.sqrt(2 * degrees);
        double low = Math.max(0, 1 - reach);
        double width = (1 + reach - low) / PANELS;
        double logFactor =
                StrictMath.log(2) + 0.5 * degrees * StrictMath.log(0.5 * degrees) - Gamma.logGamma(0.5 * degrees);
        double sum = 0;
        for (int k = 0; k < PANELS; k++) {
            for (int i = 0; i < NODES; i++) {
                double s = low + width * (k + 0.5 * (1 + RULE.getPoint(i)));
                double density = StrictMath.exp(logFactor + (degrees - 1) * StrictMath.log(s) - 0.5 * degrees * s * s);
                sum += 0.5 * width * RULE.getWeight(i) * density * Normal.cumulative(shift - t * s);
            }
        }
        return sum;
    }
}
