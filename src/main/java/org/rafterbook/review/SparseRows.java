package org.rafterbook.review;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A design matrix by its few entries: each row belongs to exactly one group (its session); columns in which all rows of a
 * group agree are kept once for the group, the other entries row by row.
 */
final class SparseRows {

    final int columns;
    final int groups;
    final int size;
    /** Group of each row. */
    final int[] group;
    /** Where each row's own entries begin in {@code column} and {@code value}. */
    final int[] start;

    final int[] column;
    final double[] value;
    /** Where each row's products of two own entries begin in {@code target} and {@code product}. */
    final int[] pairStart;
    /** Place of a product in the packed lower triangle. */
    final int[] target;

    final double[] product;
    /** Columns in which a group's rows have entries, ascending. */
    final int[][] columnsOfGroup;
    /** Beside {@code columnsOfGroup}: what all rows of the group have there, 0 where they differ. */
    final double[][] shared;

    /**
     * Packs rows.
     *
     * @param dense one array a row
     * @param group group of each row, from 0
     */
    SparseRows(double[][] dense, int columns, int[] group, int groups) {
        this.columns = columns;
        this.groups = groups;
        this.group = group.clone();
        size = dense.length;
        double[][] own = new double[size][];
        columnsOfGroup = new int[groups][];
        shared = new double[groups][];
        for (int g = 0; g < groups; g++) {
            int number = g;
            share(
                    dense,
                    IntStream.range(0, size).filter(i -> group[i] == number).toArray(),
                    g,
                    own);
        }
        start = new int[size + 1];
        pairStart = new int[size + 1];
        for (int i = 0; i < size; i++) {
            int entries = (int) Arrays.stream(own[i]).filter(v -> v != 0).count();
            start[i + 1] = start[i] + entries;
            pairStart[i + 1] = pairStart[i] + entries * (entries + 1) / 2;
        }
        column = new int[start[size]];
        value = new double[start[size]];
        target = new int[pairStart[size]];
        product = new double[pairStart[size]];
        for (int i = 0; i < size; i++) {
            fill(own[i], start[i], pairStart[i]);
        }
    }

    /** Takes out of a group's rows what they share. */
    private void share(double[][] dense, int[] members, int g, double[][] own) {
        for (int i : members) {
            own[i] = dense[i].clone();
        }
        columnsOfGroup[g] = IntStream.range(0, columns)
                .filter(j -> Arrays.stream(members).anyMatch(i -> dense[i][j] != 0))
                .toArray();
        shared[g] = new double[columnsOfGroup[g].length];
        for (int k = 0; k < shared[g].length; k++) {
            int j = columnsOfGroup[g][k];
            double first = dense[members[0]][j];
            if (Arrays.stream(members).allMatch(i -> dense[i][j] == first)) {
                shared[g][k] = first;
                for (int i : members) {
                    own[i][j] = 0;
                }
            }
        }
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

    /** Each row's entries times these coefficients, plus its group's own level. */
    void multiply(double[] coefficients, double[] groupLevels, double[] out) {
        double[] common = new double[groups];
        for (int g = 0; g < groups; g++) {
            double sum = groupLevels[g];
            for (int k = 0; k < shared[g].length; k++) {
                sum += shared[g][k] * coefficients[columnsOfGroup[g][k]];
            }
            common[g] = sum;
        }
        for (int i = 0; i < size; i++) {
            double sum = common[group[i]];
            for (int k = start[i]; k < start[i + 1]; k++) {
                sum += value[k] * coefficients[column[k]];
            }
            out[i] = sum;
        }
    }

    /** Place of row i, column j (j not above i) in a packed lower triangle. */
    static int packed(int i, int j) {
        return i * (i + 1) / 2 + j;
    }
}
