package org.rafterbook.review;

/**
 * A linear mixed model whose responses may be known only within ends: y = W theta + group + error.
 *
 * @param rows the design
 * @param low response, or its lower end; minus infinity where there is none
 * @param high response, or its upper end; plus infinity where there is none
 * @param priorMean prior mean of each column
 * @param priorSd prior standard deviation of each column; of no effect on level columns
 * @param isLevel columns whose prior is N(0, tau^2 / 2), so that a difference of two has standard deviation tau
 * @param sigma prior of the errors' scale
 * @param between prior of the groups' standard deviation
 * @param tau prior of the levels' scale
 * @param errorDegrees degrees of freedom of Student's errors, infinite for normal ones
 */
@SuppressWarnings("ArrayRecordComponent") // a part of a computation, never compared
record CensoredModel(
        SparseRows rows,
        double[] low,
        double[] high,
        double[] priorMean,
        double[] priorSd,
        boolean[] isLevel,
        ScalePrior sigma,
        ScalePrior between,
        LevelPrior tau,
        double errorDegrees) {

    int levels() {
        int count = 0;
        for (boolean level : isLevel) {
            count += level ? 1 : 0;
        }
        return count;
    }

    /** Prior precision of each column where tau^2 has this value. */
    void precision(double tauSquared, double[] out) {
        for (int j = 0; j < out.length; j++) {
            out[j] = isLevel[j] ? 2 / tauSquared : 1 / (priorSd[j] * priorSd[j]);
        }
    }
}
