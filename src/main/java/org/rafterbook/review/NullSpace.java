package org.rafterbook.review;

import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * What the clean flights cannot tell: the combinations of columns that are nothing in all of them.
 *
 * <p>A contrast can be told exactly where it meets none of these combinations; the contrast is tested, never a
 * coefficient, because a solver's choice of dropped columns gives numbers to contrasts that cannot be told.
 */
final class NullSpace {

    private static final double TOLERANCE = 1e-7;

    private final int columns;
    private final int[] used;
    private final double[][] basis;

    /**
     * Decomposes the clean flights' columns.
     *
     * @param with which columns take part
     * @param days true where every day has a level of its own
     */
    NullSpace(Design design, Predicate<DesignColumn> with, boolean days) {
        columns = design.columns().size();
        used = IntStream.range(0, columns)
                .filter(j -> with.test(design.columns().get(j)))
                .toArray();
        int sessions = days ? design.sessions().size() : 0;
        double[][] rows = IntStream.range(0, design.flights().size())
                .filter(i -> design.flights().get(i).isExact())
                .mapToObj(i -> {
                    double[] row = new double[used.length + sessions];
                    for (int k = 0; k < used.length; k++) {
                        row[k] = design.at(i, used[k]);
                    }
                    if (days) {
                        String session = design.flights().get(i).sessionId();
                        row[used.length + design.sessions().indexOf(session)] = 1;
                    }
                    return row;
                })
                .toArray(double[][]::new);
        basis = new PivotedQr(rows).nullSpace();
    }

    /** How much of each combination a contrast meets; 0 where it is less than can be told from rounding. */
    double[] meets(double[] contrast) {
        double least = leastMet(contrast);
        double[] met = along(contrast);
        for (int q = 0; q < met.length; q++) {
            met[q] = Math.abs(met[q]) <= least ? 0 : met[q];
        }
        return met;
    }

    /** The same with what rounding leaves; for a sum of contrasts it is the sum. */
    double[] along(double[] contrast) {
        double[] met = new double[basis.length];
        for (int q = 0; q < basis.length; q++) {
            for (int k = 0; k < used.length; k++) {
                met[q] += contrast[used[k]] * basis[q][k];
            }
        }
        return met;
    }

    /** Up to here a contrast meets a combination no more than rounding explains; for a sum it is no more than the sum. */
    static double leastMet(double[] contrast) {
        double squares = 0;
        for (double c : contrast) {
            squares += c * c;
        }
        return TOLERANCE * Math.sqrt(squares);
    }

    /** True where the clean flights can tell the contrast. */
    boolean tells(double[] contrast) {
        for (double met : meets(contrast)) {
            if (met != 0) {
                return false;
            }
        }
        return true;
    }
}
