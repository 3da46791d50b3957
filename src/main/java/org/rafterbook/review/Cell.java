package org.rafterbook.review;

import java.util.ArrayList;
import java.util.List;

/** The flights of one stratum in flying order, each with one of the two values compared. */
final class Cell {

    private final List<Double> values = new ArrayList<>();
    private final List<Boolean> second = new ArrayList<>();

    void add(double value, boolean isSecond) {
        values.add(value);
        second.add(isSecond);
    }

    int size() {
        return values.size();
    }

    int countTo() {
        return (int) second.stream().filter(s -> s).count();
    }

    int countFrom() {
        return size() - countTo();
    }

    boolean holdsBoth() {
        return countTo() > 0 && countFrom() > 0;
    }

    double value(int i) {
        return values.get(i);
    }

    double weight() {
        return (double) countFrom() * countTo() / size();
    }

    int degrees() {
        return size() - 2;
    }

    /** Weight times the difference of the two means, second less first. */
    double weightedDifference() {
        return weight() * (mean(true) - mean(false));
    }

    /** Sum of squares about the two means. */
    double squares() {
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            double d = values.get(i) - mean(second.get(i));
            sum += d * d;
        }
        return sum;
    }

    /** True where every flight of the value named first came before every flight of the other. */
    boolean separated(boolean secondFirst) {
        return second.lastIndexOf(secondFirst) < second.indexOf(!secondFirst);
    }

    private double mean(boolean ofSecond) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < size(); i++) {
            if (second.get(i) == ofSecond) {
                sum += values.get(i);
                count++;
            }
        }
        return sum / count;
    }
}
