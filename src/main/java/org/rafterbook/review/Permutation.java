package org.rafterbook.review;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.Well19937c;

/**
 * Two-sided permutation test: how often labels dealt by chance within the strata differ at least as much.
 *
 * <p>Up to 200 000 arrangements are all counted; beyond that 10 000 random ones from a fixed seed are, and the one flown
 * is added to them.
 *
 * @param p share of arrangements with at least the difference flown
 * @param everyArrangement true where all arrangements were counted
 */
record Permutation(double p, boolean everyArrangement) {

    private static final long MOST_COUNTED = 200_000;
    private static final int RANDOM = 10_000;
    private static final long SEED = 20_260_120;
    private static final double TIE = 1e-12;

    static Permutation within(List<Cell> cells, double weight, double effect) {
        double least = (Math.abs(effect) - TIE) * weight;
        return arrangements(cells) <= MOST_COUNTED ? counted(cells, least) : drawn(cells, least);
    }

    /** Number of ways to deal the labels, or a number above the limit as soon as it is passed. */
    private static long arrangements(List<Cell> cells) {
        long product = 1;
        for (Cell cell : cells) {
            long choose = 1;
            for (int k = 1; k <= cell.countFrom(); k++) {
                choose = choose * (cell.countTo() + k) / k;
                if (choose > MOST_COUNTED) {
                    return choose;
                }
            }
            product *= choose;
            if (product > MOST_COUNTED) {
                return product;
            }
        }
        return product;
    }

    private static Permutation counted(List<Cell> cells, double least) {
        double[] sums = {0};
        for (Cell cell : cells) {
            List<Double> own = new ArrayList<>();
            deal(cell, 0, cell.countFrom(), 0, own);
            double[] next = new double[sums.length * own.size()];
            int k = 0;
            for (double sum : sums) {
                for (double term : own) {
                    next[k++] = sum + term;
                }
            }
            sums = next;
        }
        long hits = 0;
        for (double sum : sums) {
            if (Math.abs(sum) >= least) {
                hits++;
            }
        }
        return new Permutation((double) hits / sums.length, true);
    }

    /** Adds the weighted difference of every way to pick {@code left} more first labels from position {@code at} on. */
    private static void deal(Cell cell, int at, int left, double sumFrom, List<Double> out) {
        if (left == 0) {
            out.add(difference(cell, sumFrom));
        } else if (cell.size() - at >= left) {
            deal(cell, at + 1, left - 1, sumFrom + cell.value(at), out);
            deal(cell, at + 1, left, sumFrom, out);
        }
    }

    /** n_a n_b / n times the difference of means, from the sum over the first label alone. */
    private static double difference(Cell cell, double sumFrom) {
        return expected(cell) - sumFrom;
    }

    /** The sum over the first label if both had the same mean. */
    private static double expected(Cell cell) {
        double all = 0;
        for (int i = 0; i < cell.size(); i++) {
            all += cell.value(i);
        }
        return all * cell.countFrom() / cell.size();
    }

    private static Permutation drawn(List<Cell> cells, double least) {
        Well19937c random = new Well19937c(SEED);
        double[] expected = cells.stream().mapToDouble(Permutation::expected).toArray();
        int[] from = cells.stream().mapToInt(Cell::countFrom).toArray();
        int hits = 0;
        for (int draw = 0; draw < RANDOM; draw++) {
            double sum = 0;
            for (int c = 0; c < expected.length; c++) {
                sum += expected[c] - randomSum(cells.get(c), from[c], random);
            }
            if (Math.abs(sum) >= least) {
                hits++;
            }
        }
        return new Permutation((hits + 1.0) / (RANDOM + 1), false);
    }

    /** Sum over a random choice of so many of the stratum's flights, by selection sampling. */
    private static double randomSum(Cell cell, int count, Well19937c random) {
        double sum = 0;
        int left = count;
        for (int i = 0; left > 0; i++) {
            if (random.nextInt(cell.size() - i) < left) {
                sum += cell.value(i);
                left--;
            }
        }
        return sum;
    }
}
