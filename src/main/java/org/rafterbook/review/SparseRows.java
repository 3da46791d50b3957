package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A design matrix by its few entries: each row belongs to exactly one group (its session) and has some entries in the
 * other columns.
 */
final class SparseRows {

    final int columns;
    final int groups;
    final int size;
    /** Group of each row. */
    final int[] group;
    /** Where each row's entries begin in {@code column} and {@code value}. */
    final int[] start;

    final int[] column;
    final double[] value;
    /** Where each row's products of two entries begin in {@code target} and {@code product}. */
    final int[] pairStart;
    /** Place of a product in the packed lower triangle. */
    final int[] target;

    final double[] product;
    /** Columns in which a group's rows have entries, ascending. */
    final int[][] columnsOfGroup;

    /**
     * Packs rows.
     *
     * @param dense one array a row, zeros left out
     * @param group group of each row, from 0
     */
    SparseRows(double[][] dense, int columns, int[] group, int groups) {
        this.columns = columns;
        this.groups = groups;
        this.group = group.clone();
        size = dense.length;
        start = new int[size + 1];
        pairStart = new int[size + 1];
        for (int i = 0; i < size; i++) {
            int entries = 0;
            for (double v : dense[i]) {
                entries += v == 0 ? 0 : 1;
            }
            start[i + 1] = start[i] + entries;
            pairStart[i + 1] = pairStart[i] + entries * (entries + 1) / 2;
        }
        column = new int[start[size]];
        value = new double[start[size]];
        target = new int[pairStart[size]];
        product = new double[pairStart[size]];
        for (int i = 0; i < size; i++) {
            fill(dense[i], start[i], pairStart[i]);
        }
        columnsOfGroup = columnsOfGroups();
    }

    private void fill(double[] row, int firstEntry, int firstPair) {
        int k = firstEntry;
        int p = firstPair;
        for (int j = 0; j < row.length; j++) {
            if (row[j] != 0) {
                column[k] = j;
                value[k++] = row[j];
                for (int m = firstEntry; m < k; m++) {
                    target[p] = packed(j, column[m]);
                    product[p++] = row[j] * value[m];
                }
            }
        }
    }

    private int[][] columnsOfGroups() {
        boolean[][] used = new boolean[groups][columns];
        for (int i = 0; i < size; i++) {
            for (int k = start[i]; k < start[i + 1]; k++) {
                used[group[i]][column[k]] = true;
            }
        }
        List<int[]> lists = new ArrayList<>();
        for (boolean[] row : used) {
            int[] list = new int[columns];
            int n = 0;
            for (int j = 0; j < columns; j++) {
                if (row[j]) {
                    list[n++] = j;
                }
            }
            lists.add(Arrays.copyOf(list, n));
        }
        return lists.toArray(int[][]::new);
    }

    /** A row's entries times these coefficients, without its group's own. */
    double dot(int row, double[] coefficients) {
        double sum = 0;
        for (int k = start[row]; k < start[row + 1]; k++) {
            sum += value[k] * coefficients[column[k]];
        }
        return sum;
    }

    /** Place of row i, column j (j not above i) in a packed lower triangle. */
    static int packed(int i, int j) {
        return i * (i + 1) / 2 + j;
    }
}
