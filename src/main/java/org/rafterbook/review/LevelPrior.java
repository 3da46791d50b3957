package org.rafterbook.review;

/**
 * Prior of the standard deviation tau of a difference of two levels: tau^2 scaled inverse chi-square, or one fixed value.
 *
 * @param degrees degrees of freedom of the inverse chi-square; 0 where tau is fixed
 * @param scale its scale, or the fixed value
 */
record LevelPrior(double degrees, double scale) {

    static LevelPrior learned(double degrees, double scale) {
        return new LevelPrior(degrees, scale);
    }

    static LevelPrior fixed(double tau) {
        return new LevelPrior(0, tau);
    }

    boolean isFixed() {
        return degrees == 0;
    }
}
