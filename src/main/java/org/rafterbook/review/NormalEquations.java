package org.rafterbook.review;

import java.util.Arrays;

/**
 * The normal equations of a mixed model at given weights and variances: A = W' diag(weight) W / sigma^2 + prior
 * precision, b = W' diag(weight) y / sigma^2 + prior precision x prior mean.
 *
 * <p>A group's column meets no other group's, so the groups are eliminated first, which costs next to nothing; the
 * Cholesky factor is that of the whole matrix with the groups in front.
 */
final class NormalEquations {

    private final SparseRows rows;
    private final int columns;
    private final int groups;
    /** Packed lower triangle over the columns: first the matrix with the groups eliminated, then its factor. */
    private final double[] factor;

    private final double[] cross;
    private final double[] weights;
    private final double[] diagonal;
    private final double[] pulls;
    private final double[] rightColumns;
    private final double[] rightGroups;

    NormalEquations(SparseRows rows) {
        this.rows = rows;
        columns = rows.columns;
        groups = rows.groups;
        factor = new double[columns * (columns + 1) / 2];
        cross = new double[groups * columns];
        weights = new double[groups];
        diagonal = new double[groups];
        pulls = new double[columns];
        rightColumns = new double[columns];
        rightGroups = new double[groups];
    }

    /**
     * Forms and factorises.
     *
     * @param weight one a row
     * @param y one a row
     * @param variance of a row of weight 1
     * @param precision prior precision of each column
     * @param mean prior mean of each column
     * @param groupPrecision prior precision of every group about 0
     */
    void set(double[] weight, double[] y, double variance, double[] precision, double[] mean, double groupPrecision) {
        Arrays.fill(factor, 0);
        Arrays.fill(cross, 0);
        Arrays.fill(weights, 0);
        Arrays.fill(rightGroups, 0);
        for (int j = 0; j < columns; j++) {
            factor[SparseRows.packed(j, j)] = precision[j];
            rightColumns[j] = precision[j] * mean[j];
        }
        addRows(weight, y, 1 / variance);
        for (int g = 0; g < groups; g++) {
            diagonal[g] = groupPrecision + weights[g];
            if (diagonal[g] > 0) {
                addGroup(g);
            }
        }
        factorise();
    }

    /** Adds what rows have of their own. */
    private void addRows(double[] weight, double[] y, double scale) {
        int[] column = rows.column;
        double[] value = rows.value;
        int[] target = rows.target;
        double[] product = rows.product;
        for (int i = 0; i < rows.size; i++) {
            double w = weight[i] * scale;
            double wy = w * y[i];
            int g = rows.group[i];
            int offset = g * columns;
            weights[g] += w;
            rightGroups[g] += wy;
            for (int k = rows.start[i]; k < rows.start[i + 1]; k++) {
                int c = column[k];
                cross[offset + c] += w * value[k];
                rightColumns[c] += wy * value[k];
            }
            for (int p = rows.pairStart[i]; p < rows.pairStart[i + 1]; p++) {
                factor[target[p]] += w * product[p];
            }
        }
    }

    /** Adds what a group's rows share and eliminates the group's column. */
    private void addGroup(int g) {
        int[] used = rows.columnsOfGroup[g];
        double[] shared = rows.shared[g];
        int offset = g * columns;
        double inverse = 1 / diagonal[g];
        double left = 1 - weights[g] * inverse;
        double[] pull = pulls;
        for (int a = 0; a < used.length; a++) {
            int i = used[a];
            if (shared[a] == 0) {
                pull[a] = -cross[offset + i] * inverse;
            } else {
                cross[offset + i] = shared[a] * weights[g];
                pull[a] = shared[a] * left;
            }
            rightColumns[i] += shared[a] * rightGroups[g] - cross[offset + i] * inverse * rightGroups[g];
        }
        for (int a = 0; a < used.length; a++) {
            int row = SparseRows.packed(used[a], 0);
            double own = cross[offset + used[a]];
            if (shared[a] != 0) {
                for (int b = 0; b <= a; b++) {
                    factor[row + used[b]] += pull[a] * cross[offset + used[b]];
                }
            } else {
                for (int b = 0; b <= a; b++) {
                    factor[row + used[b]] += pull[b] * own;
                }
            }
        }
    }

    private void factorise() {
        for (int i = 0; i < columns; i++) {
            int ri = SparseRows.packed(i, 0);
            for (int j = 0; j <= i; j++) {
                int rj = SparseRows.packed(j, 0);
                double sum = factor[ri + j];
                for (int k = 0; k < j; k++) {
                    sum -= factor[ri + k] * factor[rj + k];
                }
                if (i == j) {
                    if (!(sum > 0)) {
                        throw new ArithmeticException("normal matrix is not positive definite");
                    }
                    factor[ri + i] = Math.sqrt(sum);
                } else {
                    factor[ri + j] = sum / factor[rj + j];
                }
            }
        }
    }

    /** The solution A^-1 b, in place: columns and groups. */
    void solve(double[] theta, double[] group) {
        forward(rightColumns, theta);
        backward(theta);
        for (int g = 0; g < groups; g++) {
            group[g] = groupMean(g, theta);
        }
    }

    /** A draw from the normal distribution with mean A^-1 b and covariance A^-1, in place: columns and groups. */
    void draw(RandomStream random, double[] theta, double[] group) {
        forward(rightColumns, theta);
        for (int j = 0; j < columns; j++) {
            theta[j] += random.normal();
        }
        backward(theta);
        for (int g = 0; g < groups; g++) {
            group[g] = groupMean(g, theta) + random.normal() / Math.sqrt(diagonal[g]);
        }
    }

    /** c' A^-1 c for a contrast of the columns. */
    double variance(double[] contrast) {
        double sum = 0;
        for (double v : whitened(contrast)) {
            sum += v * v;
        }
        return sum;
    }

    /** L^-1 c for a contrast of the columns, A = L L': what two of these share, summed, is their covariance. */
    double[] whitened(double[] contrast) {
        double[] x = new double[columns];
        forward(contrast, x);
        return x;
    }

    private double groupMean(int g, double[] theta) {
        double sum = rightGroups[g];
        for (int c : rows.columnsOfGroup[g]) {
            sum -= cross[g * columns + c] * theta[c];
        }
        return sum / diagonal[g];
    }

    private void forward(double[] right, double[] x) {
        for (int i = 0; i < columns; i++) {
            int row = SparseRows.packed(i, 0);
            double sum = right[i];
            for (int k = 0; k < i; k++) {
                sum -= factor[row + k] * x[k];
            }
            x[i] = sum / factor[row + i];
        }
    }

    private void backward(double[] x) {
        for (int i = columns - 1; i >= 0; i--) {
            int row = SparseRows.packed(i, 0);
            x[i] /= factor[row + i];
            for (int k = 0; k < i; k++) {
                x[k] -= factor[row + k] * x[i];
            }
        }
    }
}
