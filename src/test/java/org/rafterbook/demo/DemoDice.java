package org.rafterbook.demo;

import java.util.List;
import java.util.Random;

/** All chance of the season from one printed seed; the same numbers on every machine. */
final class DemoDice {

    private final Random random;

    DemoDice(long seed) {
        this.random = new Random(seed);
    }

    /** Normal with mean 0. */
    double normal(double sd) {
        return sd * random.nextGaussian();
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    /** A small count with this mean (Poisson, by Knuth's multiplication of uniform numbers). */
    int count(double mean) {
        double limit = StrictMath.exp(-mean);
        double product = random.nextDouble();
        int count = 0;
        while (product > limit) {
            product *= random.nextDouble();
            count++;
        }
        return count;
    }

    <T> T of(List<T> items) {
        return items.get(random.nextInt(items.size()));
    }

    /** Rounded to one part in so many. */
    static double rounded(double value, int parts) {
        return StrictMath.rint(value * parts) / parts;
    }
}
