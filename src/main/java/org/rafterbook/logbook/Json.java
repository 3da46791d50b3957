package org.rafterbook.logbook;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;

/** Flat JSON objects of texts, whole numbers (Long), numbers (Double) and nulls; streamed, so that starting is quick. */
final class Json {

    private static final JsonFactory FACTORY = new JsonFactory();

    private Json() {}

    static String write(Map<String, ? extends @Nullable Object> values) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.writeStartObject();
            for (Map.Entry<String, ? extends @Nullable Object> value : values.entrySet()) {
                json.writeFieldName(value.getKey());
                write(json, value.getValue());
            }
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    static String array(Collection<? extends @Nullable Object> values) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.writeStartArray();
            for (Object value : values) {
                write(json, value);
            }
            json.writeEndArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void write(JsonGenerator json, @Nullable Object value) throws IOException {
        if (value == null) {
            json.writeNull();
        } else if (value instanceof Long whole) {
            json.writeNumber(whole);
        } else if (value instanceof Double number) {
            json.writeNumber(number);
        } else {
            json.writeString((String) value);
        }
    }

    static Map<String, @Nullable Object> read(String text) {
        Map<String, @Nullable Object> values = new LinkedHashMap<>();
        try (JsonParser json = FACTORY.createParser(text)) {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                throw notFlat(text, null);
            }
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                values.put(
                        name,
                        switch (json.nextToken()) {
                            case VALUE_NULL -> null;
                            case VALUE_NUMBER_INT -> json.getLongValue();
                            case VALUE_NUMBER_FLOAT -> json.getDoubleValue();
                            case VALUE_STRING -> json.getText();
                            default -> throw notFlat(text, null);
                        });
            }
        } catch (IOException e) {
            throw notFlat(text, e);
        }
        return values;
    }

    private static UserError notFlat(String text, @Nullable IOException cause) {
        return UserError.couldNot("The logbook holds something that cannot be read: " + text, cause);
    }
}
