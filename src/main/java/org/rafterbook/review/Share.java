package org.rafterbook.review;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How often something happened of how often it could, with a 90 % interval that suits small counts: Wilson's score
 * interval (Wilson 1927, J. Am. Stat. Assoc. 22:209), which never leaves 0..1 and has a width even at 0 of n.
 *
 * @param count how often it happened
 * @param of how often it could have
 * @param low lower end of the interval, 0..1; 0 where {@code of} is 0
 * @param high upper end of the interval, 0..1; 1 where {@code of} is 0
 */
public record Share(int count, int of, double low, double high) {

    /** The share with its 90 % interval. */
    public static Share of(int count, int of) {
        return of(count, of, 0.90);
    }

    /** The share with an interval of another coverage. */
    static Share of(int count, int of, double coverage) {
        if (count < 0 || count > of) {
            throw new IllegalArgumentException(count + " of " + of);
        }
        if (of == 0) {
            return new Share(0, 0, 0, 1);
        }
        double z = new NormalDistribution(0, 1).inverseCumulativeProbability(0.5 + coverage / 2);
        double z2 = z * z;
        double middle = (count + z2 / 2) / (of + z2);
        double half = z * Math.sqrt((double) count * (of - count) / of + z2 / 4) / (of + z2);
        return new Share(count, of, count == 0 ? 0 : middle - half, count == of ? 1 : middle + half);
    }

    public boolean isKnown() {
        return of > 0;
    }

    /** The share itself, 0..1; NaN is never returned: 0 where nothing could have happened. */
    public double share() {
        return of == 0 ? 0 : (double) count / of;
    }

    /** Such as "3 of 4". */
    public String counts() {
        return of == 0 ? "not tried" : count + " of " + of;
    }

    /** Such as "3 of 4 (36 to 94 %)". */
    public String words() {
        return of == 0 ? counts() : counts() + " (" + Math.round(100 * low) + " to " + Math.round(100 * high) + " %)";
    }
}
