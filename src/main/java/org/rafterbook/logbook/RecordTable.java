package org.rafterbook.logbook;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The table that holds one type of record: named like the record, a column for each component and {@code gone_at}. The
 * component {@code id} is the key.
 */
final class RecordTable<R extends Record> {

    static final String GONE = "gone_at";

    private final Class<R> type;
    private final String name;
    private final List<Column> columns;
    private final Constructor<R> constructor;

    RecordTable(Class<R> type) {
        this.type = type;
        this.name = Column.snakeCase(type.getSimpleName());
        RecordComponent[] components = type.getRecordComponents();
        this.columns = Arrays.stream(components).map(Column::new).toList();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            this.constructor = type.getConstructor(types);
        } catch (NoSuchMethodException e) {
            throw new IllegalArgumentException(type + " is not public", e);
        }
    }

    String name() {
        return name;
    }

    /** The words for one row, such as {@code rubber batch}. */
    String words() {
        return name.replace('_', ' ');
    }

    int width() {
        return columns.size();
    }

    Column column(String component) {
        return columns.stream()
                .filter(column -> column.component().equals(component))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(type.getSimpleName() + " has no " + component));
    }

    /** The columns of the record, to be read by {@link #read} from a query that gives the table this alias. */
    String columns(String alias) {
        return columns.stream()
                .map(column -> alias + ".\"" + column.name() + '"')
                .collect(Collectors.joining(", "));
    }

    /** The record whose columns start at this index of the current row. */
    R read(ResultSet rows, int firstIndex) throws SQLException {
        @Nullable Object[] values = new @Nullable Object[columns.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = columns.get(i).read(rows, firstIndex + i);
        }
        return construct(values);
    }

    /** Column names and what they hold for a record that is not gone. */
    Map<String, @Nullable Object> stored(R row) {
        Map<String, @Nullable Object> values = new LinkedHashMap<>();
        for (Column column : columns) {
            values.put(column.name(), column.stored(row));
        }
        values.put(GONE, null);
        return values;
    }

    /** The record that column values stand for. */
    R record(Map<String, @Nullable Object> stored) {
        return construct(columns.stream()
                .map(column -> column.decode(stored.get(column.name())))
                .toArray());
    }

    /** Names of all columns, {@code gone_at} last. */
    List<String> columnNames() {
        return Stream.concat(columns.stream().map(Column::name), Stream.of(GONE))
                .toList();
    }

    private R construct(@Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("cannot make a " + type.getSimpleName(), e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make a " + type.getSimpleName(), e);
        }
    }
}
