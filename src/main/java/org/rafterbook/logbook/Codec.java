package org.rafterbook.logbook;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.rafterbook.units.Worded;

/** How a type of component is held in a column. */
record Codec(Function<Object, Object> encode, Function<Object, Object> decode) {

    /** Fixed width, so that the order of the texts is the order in time. */
    private static final DateTimeFormatter INSTANT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);

    private static final Codec SAME = new Codec(value -> value, stored -> stored);
    private static final Codec WHOLE =
            new Codec(value -> ((Number) value).longValue(), stored -> ((Number) stored).intValue());
    private static final Codec YES_NO =
            new Codec(value -> (Boolean) value ? 1L : 0L, stored -> ((Number) stored).intValue() == 1);

    private static final Map<Type, Codec> KNOWN = Map.ofEntries(
            Map.entry(String.class, SAME),
            Map.entry(double.class, SAME),
            Map.entry(Double.class, SAME),
            Map.entry(long.class, SAME),
            Map.entry(Long.class, SAME),
            Map.entry(int.class, WHOLE),
            Map.entry(Integer.class, WHOLE),
            Map.entry(boolean.class, YES_NO),
            Map.entry(Boolean.class, YES_NO),
            Map.entry(Instant.class, text(value -> text((Instant) value), Codec::instant)),
            Map.entry(LocalDate.class, text(Object::toString, LocalDate::parse)),
            Map.entry(ZoneId.class, text(value -> ((ZoneId) value).getId(), ZoneId::of)));

    static Codec of(Type type) {
        Codec known = KNOWN.get(type);
        if (known != null) {
            return known;
        }
        if (type instanceof Class<?> enumeration && enumeration.isEnum()) {
            return words(enumeration);
        }
        if (type instanceof ParameterizedType map && map.getRawType() == Map.class) {
            return text(value -> Json.write((Map<String, ?>) value), Codec::textMap);
        }
        throw new IllegalArgumentException("no column holds a " + type);
    }

    Object encode(Object value) {
        return encode.apply(value);
    }

    Object decode(Object stored) {
        return decode.apply(stored);
    }

    static String text(Instant instant) {
        return INSTANT.format(instant);
    }

    static Instant instant(String text) {
        return Instant.parse(text);
    }

    private static Codec text(Function<Object, Object> encode, Function<String, Object> decode) {
        return new Codec(encode, stored -> decode.apply((String) stored));
    }

    private static Codec words(Class<?> enumeration) {
        Map<Object, Object> byWord = new HashMap<>();
        for (Object constant : enumeration.getEnumConstants()) {
            byWord.put(((Worded) constant).word(), constant);
        }
        return new Codec(value -> ((Worded) value).word(), stored -> {
            Object constant = byWord.get(stored);
            if (constant == null) {
                throw new IllegalArgumentException(stored + " is no word of " + enumeration.getSimpleName());
            }
            return constant;
        });
    }

    private static Map<String, String> textMap(String json) {
        if (json.equals("{}")) {
            return Map.of();
        }
        Map<String, String> texts = new LinkedHashMap<>();
        Json.read(json).forEach((key, value) -> texts.put(key, String.valueOf(value)));
        return Collections.unmodifiableMap(texts);
    }
}
