package org.rafterbook.stability;

/**
 * Lift of a whole model for one linear piece of its flow. Lift is over rho V^2, so a lift coefficient is twice the lift over
 * the wing area.
 *
 * @param lift lift of each surface over rho V^2, m^2
 * @param moment lift of each surface times its place aft of the origin, m^3
 * @param circulation circulation of each strip over V, m
 */
record Loads(double[] lift, double[] moment, double[] circulation) {

    static Loads zero(int surfaces, int strips) {
        return new Loads(new double[surfaces], new double[surfaces], new double[strips]);
    }

    /** These loads and a multiple of others. */
    Loads plus(double factor, Loads other) {
        return new Loads(
                sum(lift, factor, other.lift),
                sum(moment, factor, other.moment),
                sum(circulation, factor, other.circulation));
    }

    /** A multiple of these loads. */
    Loads times(double factor) {
        return zero(lift.length, circulation.length).plus(factor, this);
    }

    double totalLift() {
        return total(lift);
    }

    double totalMoment() {
        return total(moment);
    }

    /** Moment of the lift about a place, nose up positive, over rho V^2, m^3. */
    double noseUpAbout(double aftM) {
        return aftM * totalLift() - totalMoment();
    }

    /** Where the lift acts, aft of the origin, m. */
    double centreM() {
        return totalMoment() / totalLift();
    }

    private static double total(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    private static double[] sum(double[] a, double factor, double[] b) {
        double[] sum = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            sum[i] = a[i] + factor * b[i];
        }
        return sum;
    }
}
