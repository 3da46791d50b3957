package org.rafterbook.review;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Numbers of a comma-separated test resource; lines with # and the heading are skipped. */
final class Rows {

    private Rows() {}

    static List<double[]> of(String resource) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Rows.class.getResourceAsStream(resource), resource), StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
