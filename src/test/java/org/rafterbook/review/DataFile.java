package org.rafterbook.review;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** A small CSV of numbers from the test resources; its first lines, marked with #, name its source. */
final class DataFile {

    private final List<String> heads;
    private final double[][] rows;

    private DataFile(List<String> heads, double[][] rows) {
        this.heads = heads;
        this.rows = rows;
    }

    static DataFile read(String name) {
        try (InputStream in = Objects.requireNonNull(DataFile.class.getResourceAsStream(name), name)) {
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .toList();
            double[][] rows = lines.stream()
                    .skip(1)
                    .map(line -> Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toArray(double[][]::new);
            return new DataFile(List.of(lines.get(0).split(",")), rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    int size() {
        return rows.length;
    }

    double at(int row, String head) {
        return rows[row][heads.indexOf(head)];
    }

    double[] column(String head) {
        int column = heads.indexOf(head);
        return Arrays.stream(rows).mapToDouble(row -> row[column]).toArray();
    }
}
