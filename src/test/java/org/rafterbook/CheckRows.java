package org.rafterbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Reads rows of published check values from the test resources; a row carries its own source and standing. */
public final class CheckRows {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Map<String, NamedCsvRecord> rows = new LinkedHashMap<>();

    private CheckRows() {}

    /** The rows of a file of {@code src/test/resources/checks}. */
    public static CheckRows of(String file) {
        CheckRows checks = new CheckRows();
        try (InputStream in = CheckRows.class.getResourceAsStream("/checks/" + file);
                CsvReader<NamedCsvRecord> csv = CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            csv.forEach(row -> checks.rows.put(row.getField("id"), row));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return checks;
    }

    /** One number among a row's inputs. */
    public double input(String id, String name) {
        JsonNode value = json(row(id).getField("inputs")).get(name);
        assertThat(value).as(id + " " + name).isNotNull();
        return value.doubleValue();
    }

    /** Holds a row's single expected value within the row's own tolerance. */
    public void hold(String id, double actual) {
        hold(id, new double[] {actual});
    }

    /** Holds a row's expected values, each within its own tolerance. */
    public void hold(String id, double[] actual) {
        double[] expected = numbers(row(id).getField("expected"));
        double[] tolerance = numbers(row(id).getField("tolerance").replace("abs", ""));
        assertThat(actual).as(id).hasSameSizeAs(expected);
        for (int i = 0; i < expected.length; i++) {
            assertThat(actual[i])
                    .as("%s, %s (%s)", id, row(id).getField("source"), row(id).getField("standing"))
                    .isCloseTo(expected[i], within(tolerance[Math.min(i, tolerance.length - 1)]));
        }
    }

    private NamedCsvRecord row(String id) {
        assertThat(rows).containsKey(id);
        return rows.get(id);
    }

    private static double[] numbers(String text) {
        JsonNode node = json(text);
        double[] numbers = new double[node.isArray() ? node.size() : 1];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = (node.isArray() ? node.get(i) : node).doubleValue();
        }
        return numbers;
    }

    private static JsonNode json(String text) {
        try {
            return JSON.readTree(text.strip());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
