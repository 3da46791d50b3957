package org.rafterbook.stability;

/**
 * LU factors of a dense square matrix with row pivoting (Gauss). Rows are separate arrays, and columns are eliminated in
 * blocks, four at a time, so that the innermost loop runs along rows, is turned into vector instructions and finds its rows
 * in the cache.
 */
final class DenseLu {

    private static final int AT_A_TIME = 4;

    /** Columns per block; more where the matrix is too large for the cache and would be streamed once per block. */
    private static final int BLOCK = 4;

    private static final int LARGE_BLOCK = 32;
    private static final int LARGE = 1000;

    private final double[][] rows;
    private final int[] from;

    /**
     * Factors a matrix.
     *
     * @param matrix square, by rows; taken over and overwritten
     * @throws ArithmeticException for a singular matrix
     */
    DenseLu(double[][] matrix) {
        rows = matrix;
        int n = matrix.length;
        from = new int[n];
        for (int i = 0; i < n; i++) {
            from[i] = i;
        }
        int block = n < LARGE ? BLOCK : LARGE_BLOCK;
        for (int k = 0; k < n; k += block) {
            int end = Math.min(k + block, n);
            factorColumns(k, end);
            eliminate(k, end);
        }
    }

    /** Factors columns k to end below row k, swapping whole rows. */
    private void factorColumns(int k, int end) {
        int n = rows.length;
        for (int c = k; c < end; c++) {
            int best = c;
            for (int i = c + 1; i < n; i++) {
                if (Math.abs(rows[i][c]) > Math.abs(rows[best][c])) {
                    best = i;
                }
            }
            double[] pivotRow = rows[best];
            double pivot = pivotRow[c];
            if (pivot == 0 || !Double.isFinite(pivot)) {
                throw new ArithmeticException("singular matrix");
            }
            rows[best] = rows[c];
            rows[c] = pivotRow;
            int place = from[best];
            from[best] = from[c];
            from[c] = place;
            for (int i = c + 1; i < n; i++) {
                double[] row = rows[i];
                double factor = row[c] / pivot;
                row[c] = factor;
                for (int j = c + 1; j < end; j++) {
                    row[j] -= factor * pivotRow[j];
                }
            }
        }
    }

    /** Finishes rows k to end beyond the block and takes them out of all rows below. */
    private void eliminate(int k, int end) {
        int n = rows.length;
        if (end == n) {
            return;
        }
        for (int c = k; c < end; c++) {
            for (int i = c + 1; i < end; i++) {
                subtract(rows[i], rows[i][c], rows[c], end);
            }
        }
        for (int i = end; i < n; i++) {
            double[] row = rows[i];
            for (int c = k; c < end; c += AT_A_TIME) {
                subtractFour(row, c, end);
            }
        }
    }

    private static void subtract(double[] row, double factor, double[] other, int start) {
        for (int j = start; j < row.length; j++) {
            row[j] -= factor * other[j];
        }
    }

    /** Takes four finished rows out of one, from a column on. */
    private void subtractFour(double[] row, int c, int start) {
        double[] r0 = rows[c];
        double[] r1 = rows[c + 1];
        double[] r2 = rows[c + 2];
        double[] r3 = rows[c + 3];
        double f0 = row[c];
        double f1 = row[c + 1];
        double f2 = row[c + 2];
        double f3 = row[c + 3];
        for (int j = start; j < row.length; j++) {
            row[j] -= f0 * r0[j] + f1 * r1[j] + f2 * r2[j] + f3 * r3[j];
        }
    }

    /** The solution for one right-hand side, as a new array. */
    double[] solve(double[] right) {
        int n = rows.length;
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = right[from[i]] - dot(rows[i], x, 0, i);
        }
        for (int i = n - 1; i >= 0; i--) {
            x[i] = (x[i] - dot(rows[i], x, i + 1, n)) / rows[i][i];
        }
        return x;
    }

    static double dot(double[] a, double[] b, int start, int end) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int j = start;
        for (; j + 3 < end; j += 4) {
            s0 += a[j] * b[j];
            s1 += a[j + 1] * b[j + 1];
            s2 += a[j + 2] * b[j + 2];
            s3 += a[j + 3] * b[j + 3];
        }
        for (; j < end; j++) {
            s0 += a[j] * b[j];
        }
        return s0 + s1 + (s2 + s3);
    }
}
