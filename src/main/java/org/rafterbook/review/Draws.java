package org.rafterbook.review;

import java.util.Arrays;

/**
 * Draws from a posterior and its means.
 *
 * @param contrasts one array of draws a contrast asked for
 * @param sigma draws of the errors' scale
 * @param between draws of the groups' standard deviation
 * @param tau draws of the levels' scale
 * @param columnMeans posterior mean of each column
 * @param groupMeans posterior mean of each group
 * @param responseMeans posterior mean of each response, the response itself where it is exact
 * @param weightMeans posterior mean of what each response weighs among Student's errors, near 1 for most and near 0 for
 *     one far off; 1 with normal errors
 */
@SuppressWarnings("ArrayRecordComponent") // a part of a computation, never compared
record Draws(
        double[][] contrasts,
        double[] sigma,
        double[] between,
        double[] tau,
        double[] columnMeans,
        double[] groupMeans,
        double[] responseMeans,
        double[] weightMeans) {

    /** Mean, spread and ends of one contrast. */
    Estimate estimate(int contrast) {
        return Estimate.of(contrasts[contrast]);
    }

    static double mean(double[] draws) {
        return Arrays.stream(draws).sum() / draws.length;
    }
}
