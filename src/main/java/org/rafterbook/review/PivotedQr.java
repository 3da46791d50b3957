package org.rafterbook.review;

/**
 * Householder QR decomposition with column pivoting of columns scaled to unit length, which tells how many columns are
 * independent, which combinations of them are nothing, and solves least squares.
 *
 * <p>The rank is the number of |R_kk| above 1e-9 |R_11|. Written out here because the library's rank-revealing
 * decomposition (Hipparchus 4.0.3) picks its pivots by whole columns instead of what is left of them, and so can put a
 * dependent column before an independent one.
 */
final class PivotedQr {

    private static final double TOLERANCE = 1e-9;

    /** Column by column: R on and above the diagonal, the reflections' vectors from the diagonal down beside it. */
    private final double[][] work;

    private final double[] diagonal;
    private final double[] lengths;
    /** Sum of squares of what is left of each column. */
    private final double[] left;

    private final int[] order;
    private final int rank;

    /**
     * Decomposes.
     *
     * @param rows at least one row of at least one column
     */
    PivotedQr(double[][] rows) {
        int columns = rows[0].length;
        work = new double[columns][rows.length];
        lengths = new double[columns];
        left = new double[columns];
        order = new int[columns];
        for (int j = 0; j < columns; j++) {
            for (int i = 0; i < rows.length; i++) {
                work[j][i] = rows[i][j];
            }
            double length = Math.sqrt(squares(work[j], 0));
            lengths[j] = length == 0 ? 1 : length;
            for (int i = 0; i < rows.length; i++) {
                work[j][i] /= lengths[j];
            }
            left[j] = squares(work[j], 0);
            order[j] = j;
        }
        int most = Math.min(rows.length, columns);
        diagonal = new double[most];
        int count = 0;
        for (int k = 0; k < most; k++) {
            bringLongest(k);
            reflect(k);
            if (Math.abs(diagonal[k]) > TOLERANCE * Math.abs(diagonal[0])) {
                count++;
            } else {
                break;
            }
        }
        rank = count;
    }

    private void bringLongest(int k) {
        int longest = k;
        double best = -1;
        for (int j = k; j < work.length; j++) {
            // Columns of equal length keep their order, whatever rounding says.
            if (left[j] > best * (1 + 1e-12)) {
                best = left[j];
                longest = j;
            }
        }
        double[] column = work[longest];
        work[longest] = work[k];
        work[k] = column;
        int own = order[longest];
        order[longest] = order[k];
        order[k] = own;
        double length = lengths[longest];
        lengths[longest] = lengths[k];
        lengths[k] = length;
        double squares = left[longest];
        left[longest] = left[k];
        left[k] = squares;
    }

    /** Turns what is left of column k onto the axis and the columns behind it with it. */
    private void reflect(int k) {
        double[] v = work[k];
        double length = Math.sqrt(left[k]);
        diagonal[k] = v[k] > 0 ? -length : length;
        if (length == 0) {
            return;
        }
        v[k] -= diagonal[k];
        double half = -diagonal[k] * v[k];
        for (int j = k + 1; j < work.length; j++) {
            boolean turned = reflect(v, k, half, work[j]);
            if (turned || work[j][k] != 0) {
                left[j] = squares(work[j], k + 1);
            }
        }
    }

    /** False where the column is at right angles to the reflection and stays as it is, as most days' columns are. */
    private static boolean reflect(double[] v, int k, double half, double[] x) {
        double dot = 0;
        for (int i = k; i < x.length; i++) {
            dot += v[i] * x[i];
        }
        if (dot == 0) {
            return false;
        }
        double scale = dot / half;
        for (int i = k; i < x.length; i++) {
            x[i] -= scale * v[i];
        }
        return true;
    }

    private static double squares(double[] column, int from) {
        double sum = 0;
        for (int i = from; i < column.length; i++) {
            sum += column[i] * column[i];
        }
        return sum;
    }

    private double r(int i, int j) {
        return i == j ? diagonal[i] : work[j][i];
    }

    /** Number of independent columns. */
    int rank() {
        return rank;
    }

    /**
     * A basis of the combinations of columns that are nothing: one vector a dropped column, its largest entry 1 in
     * absolute value.
     */
    double[][] nullSpace() {
        int columns = order.length;
        double[][] basis = new double[columns - rank][];
        for (int q = rank; q < columns; q++) {
            double[] right = new double[rank];
            for (int i = 0; i < rank; i++) {
                right[i] = -work[q][i];
            }
            double[] head = backSubstitute(right);
            double[] z = new double[columns];
            for (int i = 0; i < rank; i++) {
                z[order[i]] = head[i] / lengths[i];
            }
            z[order[q]] = 1 / lengths[q];
            basis[q - rank] = toUnitHeight(z);
        }
        return basis;
    }

    /** Least-squares coefficients; 0 for dropped columns. */
    double[] solve(double[] y) {
        double[] rotated = y.clone();
        for (int k = 0; k < rank; k++) {
            reflect(work[k], k, -diagonal[k] * work[k][k], rotated);
        }
        double[] head = backSubstitute(rotated);
        double[] coefficients = new double[order.length];
        for (int i = 0; i < rank; i++) {
            coefficients[order[i]] = head[i] / lengths[i];
        }
        return coefficients;
    }

    private double[] backSubstitute(double[] right) {
        double[] x = new double[rank];
        for (int i = rank - 1; i >= 0; i--) {
            double sum = right[i];
            for (int k = i + 1; k < rank; k++) {
                sum -= r(i, k) * x[k];
            }
            x[i] = sum / r(i, i);
        }
        return x;
    }

    private static double[] toUnitHeight(double[] z) {
        double most = 0;
        for (double v : z) {
            most = Math.max(most, Math.abs(v));
        }
        for (int j = 0; j < z.length; j++) {
            z[j] /= most;
        }
        return z;
    }
}
