package org.rafterbook.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Unit;
import org.rafterbook.units.UserError;

/** One object of an airframe sheet with the words that say where it stands; every refusal names object and key. */
final class SheetObject {

    private static final double FAR = 1e4;

    private final ObjectNode node;
    private final String where;

    /**
     * @param where subject of a sentence, such as {@code teasel.json: surface 'wing'}
     * @param known every key this object may have; any other is refused
     */
    SheetObject(JsonNode node, String where, List<String> known) {
        if (!(node instanceof ObjectNode object)) {
            throw UserError.badInput(where + " must be an object in braces.");
        }
        this.node = object;
        this.where = where;
        for (Iterator<String> keys = object.fieldNames(); keys.hasNext(); ) {
            String key = keys.next();
            if (!known.contains(key)) {
                throw error("has an unknown key '" + key + "'; known here: " + String.join(", ", known));
            }
        }
    }

    boolean has(String key) {
        return node.has(key);
    }

    UserError error(String predicate) {
        return UserError.badInput(where + " " + predicate + ".");
    }

    String text(String key) {
        JsonNode value = required(key);
        if (!value.isTextual()) {
            throw error("needs a text in quotes for '" + key + "'");
        }
        if (value.textValue().isBlank()) {
            throw error("has an empty '" + key + "'");
        }
        return value.textValue();
    }

    String textOr(String key, String otherwise) {
        JsonNode value = node.get(key);
        if (value == null) {
            return otherwise;
        }
        if (!value.isTextual()) {
            throw error("needs a text in quotes for '" + key + "'");
        }
        return value.textValue();
    }

    /** A number in the unit of its key, in SI. */
    double number(String key, Unit unit) {
        return number(key, required(key), unit);
    }

    double numberOr(String key, Unit unit, double otherwise) {
        JsonNode value = node.get(key);
        return value == null ? otherwise : number(key, value, unit);
    }

    @Nullable
    Double numberOrNull(String key, Unit unit) {
        JsonNode value = node.get(key);
        return value == null ? null : Double.valueOf(number(key, value, unit));
    }

    double notNegative(String key, Unit unit) {
        double value = number(key, unit);
        if (value < 0) {
            throw error("has a negative '" + key + "'");
        }
        return value;
    }

    private double number(String key, JsonNode value, Unit unit) {
        if (!value.isNumber()) {
            throw error("needs a number for '" + key + "', not " + value);
        }
        BigDecimal typed = value.decimalValue();
        if (Math.abs((long) typed.precision() - typed.scale()) > 300) {
            throw error("has a '" + key + "' that is out of all proportion");
        }
        double si = unit.toSi(typed);
        if (Math.abs(si) > FAR) {
            throw error("has a '" + key + "' that is out of all proportion");
        }
        return si == 0 ? 0 : si;
    }

    JsonNode required(String key) {
        JsonNode value = node.get(key);
        if (value == null || value.isNull()) {
            throw error("has no '" + key + "'");
        }
        return value;
    }

    /** The items of a list; none where the key is absent. */
    List<JsonNode> list(String key) {
        JsonNode value = node.get(key);
        if (value == null) {
            return List.of();
        }
        if (!value.isArray()) {
            throw error("needs a list in brackets for '" + key + "'");
        }
        List<JsonNode> items = new ArrayList<>();
        value.forEach(items::add);
        return items;
    }

    String where() {
        return where;
    }
}
