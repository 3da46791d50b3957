package org.rafterbook.logbook;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;

/** One component of a stored record and its column. */
final class Column {

    private final String component;
    private final String name;
    private final Method accessor;
    private final Codec codec;

    Column(RecordComponent component) {
        this.component = component.getName();
        this.name = snakeCase(component.getName());
        this.codec = Codec.of(component.getGenericType());
        this.accessor = component.getAccessor();
    }

    /** {@code durationS} is {@code duration_s}. */
    static String snakeCase(String name) {
        return name.replaceAll("([a-z0-9])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
    }

    String component() {
        return component;
    }

    String name() {
        return name;
    }

    /** What the column holds for this record: text, Long, Double or null. */
    @Nullable
    Object stored(Record row) {
        Object value;
        try {
            value = accessor.invoke(row);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
        return encode(value);
    }

    @Nullable
    Object encode(@Nullable Object value) {
        if (value instanceof Double number && !Double.isFinite(number)) {
            throw UserError.badInput("The " + words(name) + " is not a number.");
        }
        return value == null ? null : codec.encode(value);
    }

    @Nullable
    Object decode(@Nullable Object stored) {
        return stored == null ? null : codec.decode(stored);
    }

    @Nullable
    Object read(ResultSet rows, int index) throws SQLException {
        return decode(Stored.get(rows, index));
    }

    /** A column's name without its unit, as words. */
    static String words(String columnName) {
        return columnName.replaceAll("_(s|m|kg|k|pa|nm|id)$", "").replace('_', ' ');
    }
}
