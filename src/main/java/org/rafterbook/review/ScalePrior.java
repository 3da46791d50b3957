package org.rafterbook.review;

/**
 * Prior of a standard deviation: half-t, or one fixed value.
 *
 * @param degrees degrees of freedom of the half-t; 0 where the deviation is fixed
 * @param scale scale of the half-t, or the fixed value
 */
record ScalePrior(double degrees, double scale) {

    static ScalePrior halfT(double degrees, double scale) {
        return new ScalePrior(degrees, scale);
    }

    static ScalePrior fixed(double value) {
        return new ScalePrior(0, value);
    }

    boolean isFixed() {
        return degrees == 0;
    }
}
