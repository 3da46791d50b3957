package org.rafterbook.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.rafterbook.units.DecimalMark;
import org.rafterbook.units.Unit;
import org.rafterbook.units.UserError;

/** A mapping as JSON, for a file or a logbook. */
public final class MappingJson {

    private static final String KIND = "column mapping";
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final List<String> KEYS = List.of(
            "rafterbook", "edition", "name", "decimal_mark", "winder_ratio", "date_pattern", "fixed", "columns");
    private static final List<String> COLUMN_KEYS = List.of("heading", "target", "unit", "words");

    private MappingJson() {}

    public static String write(Mapping mapping) {
        ObjectNode json = MAPPER.createObjectNode();
        json.put("rafterbook", KIND).put("edition", 1).put("name", mapping.name());
        json.put("decimal_mark", mapping.mark().name().toLowerCase(Locale.ROOT));
        if (mapping.winderRatio() != null) {
            json.put("winder_ratio", mapping.winderRatio());
        }
        if (mapping.datePattern() != null) {
            json.put("date_pattern", mapping.datePattern());
        }
        if (!mapping.fixed().isEmpty()) {
            json.set("fixed", texts(mapping.fixed()));
        }
        ArrayNode columns = json.putArray("columns");
        for (ColumnRule rule : mapping.columns()) {
            ObjectNode column =
                    columns.addObject().put("heading", rule.heading()).put("target", rule.target());
            if (rule.unit() != null) {
                column.put("unit", rule.unit());
            }
            if (!rule.words().isEmpty()) {
                column.set("words", texts(rule.words()));
            }
        }
        return json.toPrettyString() + "\n";
    }

    private static ObjectNode texts(Map<String, String> texts) {
        ObjectNode json = MAPPER.createObjectNode();
        new TreeMap<>(texts).forEach(json::put);
        return json;
    }

    /**
     * Reads a mapping from a file.
     *
     * @throws UserError where it cannot be opened or is no mapping
     */
    public static Mapping read(Path file) {
        return read(TextFiles.read(file), TextFiles.nameOf(file));
    }

    /**
     * Reads a mapping.
     *
     * @param where what the sentence of an error begins with
     * @throws UserError of bad input where the text is no mapping
     */
    public static Mapping read(String json, String where) {
        JsonNode node;
        try {
            node = MAPPER.readTree(json);
        } catch (JsonProcessingException e) {
            throw UserError.badInput(where + ", line " + e.getLocation().getLineNr() + ": not readable as JSON.");
        }
        if (!KIND.equals(node.path("rafterbook").asText())) {
            throw UserError.badInput(where + " is no column mapping: it needs \"rafterbook\": \"" + KIND + "\".");
        }
        SheetObject mapping = new SheetObject(node, where, KEYS);
        List<ColumnRule> columns = new ArrayList<>();
        for (JsonNode item : mapping.list("columns")) {
            SheetObject column = new SheetObject(item, where + ": column number " + (columns.size() + 1), COLUMN_KEYS);
            columns.add(new ColumnRule(
                    column.text("heading"),
                    column.text("target"),
                    column.textOr("unit", ""),
                    texts(item.path("words"))));
        }
        return new Mapping(
                mapping.text("name"),
                columns,
                texts(node.path("fixed")),
                mark(mapping),
                mapping.numberOrNull("winder_ratio", Unit.ONE),
                mapping.has("date_pattern") ? mapping.text("date_pattern") : null);
    }

    private static DecimalMark mark(SheetObject mapping) {
        String mark = mapping.textOr("decimal_mark", "either");
        for (DecimalMark known : DecimalMark.values()) {
            if (known.name().equalsIgnoreCase(mark)) {
                return known;
            }
        }
        throw mapping.error("has the decimal mark '" + mark + "'; it can be point, comma or either");
    }

    private static Map<String, String> texts(JsonNode node) {
        Map<String, String> texts = new LinkedHashMap<>();
        node.fields().forEachRemaining(e -> texts.put(e.getKey(), e.getValue().asText()));
        return texts;
    }
}
