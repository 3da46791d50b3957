package org.rafterbook.logbook;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;

/** Reads records by their tables. */
sealed class RowReader implements Reader permits RowWriter {

    private final Sql sql;
    private boolean ended;

    RowReader(Sql sql) {
        this.sql = sql;
    }

    /** The connection, while the query or entry runs. */
    final Sql sql() {
        if (ended) {
            throw new IllegalStateException("the query or entry is over");
        }
        return sql;
    }

    /** From here on a kept reference is refused. */
    final void end() {
        ended = true;
    }

    @Override
    public final <R extends Record> @Nullable R find(Class<R> type, String id) {
        RecordTable<R> table = Tables.of(type);
        return sql().first(select(table) + " AND t.id = ?", rows -> table.read(rows, 1), id);
    }

    @Override
    public final <R extends Record> R get(Class<R> type, String id) {
        R row = find(type, id);
        if (row == null) {
            throw absent(Tables.of(type), id);
        }
        return row;
    }

    @Override
    public final <R extends Record> List<R> all(Class<R> type) {
        RecordTable<R> table = Tables.of(type);
        return sql().list(select(table) + " ORDER BY t.id", rows -> table.read(rows, 1));
    }

    @Override
    public final <R extends Record> List<R> where(Class<R> type, String component, @Nullable Object value) {
        RecordTable<R> table = Tables.of(type);
        Column column = table.column(component);
        return sql().list(
                        select(table) + " AND t.\"" + column.name() + "\" IS ? ORDER BY t.id",
                        rows -> table.read(rows, 1),
                        column.encode(value));
    }

    @Override
    public final <R extends Record> List<R> whereFilled(
            Class<R> type, String component, @Nullable Object value, String filled) {
        RecordTable<R> table = Tables.of(type);
        Column column = table.column(component);
        return sql().list(
                        select(table) + " AND t.\"" + column.name() + "\" IS ? AND t.\""
                                + table.column(filled).name() + "\" IS NOT NULL ORDER BY t.id",
                        rows -> table.read(rows, 1),
                        column.encode(value));
    }

    @Override
    public final <R extends Record> List<R> whereIn(Class<R> type, String component, Collection<?> values) {
        RecordTable<R> table = Tables.of(type);
        Column column = table.column(component);
        return sql().list(
                        select(table) + " AND t.\"" + column.name()
                                + "\" IN (SELECT value FROM json_each(?)) ORDER BY t.id",
                        rows -> table.read(rows, 1),
                        Json.array(values.stream().map(column::encode).toList()));
    }

    @Override
    public final @Nullable String preference(String name) {
        return sql().first("SELECT value FROM preference WHERE id = ?", rows -> rows.getString(1), name);
    }

    @Override
    public final FlightQueries flights() {
        return new FlightQueries(this);
    }

    @Override
    public final @Nullable String computed(String kind, String digest, String engine) {
        return Computed.find(sql(), kind, digest, engine);
    }

    /** Column names and what they hold for the row of this id, gone or not; null when there is none. */
    final @Nullable Map<String, @Nullable Object> stored(RecordTable<?> table, String id) {
        List<String> names = table.columnNames();
        String columns = names.stream().map(name -> '"' + name + '"').collect(Collectors.joining(", "));
        return sql().first(
                        "SELECT " + columns + " FROM \"" + table.name() + "\" WHERE id = ?",
                        rows -> {
                            Map<String, @Nullable Object> values = new LinkedHashMap<>();
                            for (int i = 0; i < names.size(); i++) {
                                values.put(names.get(i), Stored.get(rows, i + 1));
                            }
                            return values;
                        },
                        id);
    }

    static UserError absent(RecordTable<?> table, String id) {
        return UserError.badInput("The logbook holds no " + table.words() + " with the id " + id + ".");
    }

    private static String select(RecordTable<?> table) {
        return "SELECT " + table.columns("t") + " FROM \"" + table.name() + "\" t WHERE t.gone_at IS NULL";
    }
}
