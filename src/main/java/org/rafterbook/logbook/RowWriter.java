package org.rafterbook.logbook;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;

/** Writes records by their tables; each changed row goes into the change log. */
final class RowWriter extends RowReader implements Writer {

    private final ChangeLog log;

    RowWriter(Sql sql, ChangeLog log) {
        super(sql);
        this.log = log;
    }

    @Override
    public <R extends Record> R insert(R row) {
        RecordTable<R> table = table(row);
        Map<String, @Nullable Object> after = table.stored(row);
        put(table, null, after);
        return table.record(after);
    }

    @Override
    public <R extends Record> R update(R row) {
        RecordTable<R> table = table(row);
        Map<String, @Nullable Object> after = table.stored(row);
        put(table, present(table, String.valueOf(after.get("id"))), after);
        return table.record(after);
    }

    @Override
    public <R extends Record> void remove(Class<R> type, String id) {
        RecordTable<R> table = Tables.of(type);
        Map<String, @Nullable Object> before = present(table, id);
        put(table, before, goneNow(before));
    }

    @Override
    public void preference(String name, @Nullable String value) {
        String before = preference(name);
        if (value == null) {
            sql().run("DELETE FROM preference WHERE id = ?", name);
        } else {
            sql().run("INSERT OR REPLACE INTO preference (id, value) VALUES (?, ?)", name, value);
        }
        log.add(ChangeLog.PREFERENCE, name, json(before), json(value));
    }

    /** Puts a row in place, where {@code before} is what stands there now; an equal one leaves no trace. */
    void put(
            RecordTable<?> table, @Nullable Map<String, @Nullable Object> before, Map<String, @Nullable Object> after) {
        if (after.equals(before)) {
            return;
        }
        String id = String.valueOf(after.get("id"));
        try {
            if (before == null) {
                sql().run(insertion(table, after), after.values().toArray());
            } else {
                Map<String, @Nullable Object> parameters = new LinkedHashMap<>(after);
                parameters.put("where", id);
                sql().run(change(table, after), parameters.values().toArray());
            }
        } catch (UserError e) {
            throw References.named(sql(), table, after, e);
        }
        log.add(table.name(), id, before == null ? null : Json.write(before), Json.write(after));
    }

    static Map<String, @Nullable Object> goneNow(Map<String, @Nullable Object> row) {
        Map<String, @Nullable Object> gone = new LinkedHashMap<>(row);
        gone.put(RecordTable.GONE, Codec.text(Instant.now()));
        return gone;
    }

    private Map<String, @Nullable Object> present(RecordTable<?> table, String id) {
        Map<String, @Nullable Object> row = stored(table, id);
        if (row == null || row.get(RecordTable.GONE) != null) {
            throw absent(table, id);
        }
        return row;
    }

    private static String insertion(RecordTable<?> table, Map<String, @Nullable Object> row) {
        String columns = row.keySet().stream().map(name -> '"' + name + '"').collect(Collectors.joining(", "));
        String marks = row.keySet().stream().map(name -> "?").collect(Collectors.joining(", "));
        return "INSERT INTO \"" + table.name() + "\" (" + columns + ") VALUES (" + marks + ")";
    }

    private static String change(RecordTable<?> table, Map<String, @Nullable Object> row) {
        String columns =
                row.keySet().stream().map(name -> '"' + name + "\" = ?").collect(Collectors.joining(", "));
        return "UPDATE \"" + table.name() + "\" SET " + columns + " WHERE id = ?";
    }

    private static @Nullable String json(@Nullable String preference) {
        return preference == null ? null : Json.write(Map.of("value", preference));
    }

    @SuppressWarnings("unchecked")
    private static <R extends Record> RecordTable<R> table(R row) {
        return Tables.of((Class<R>) row.getClass());
    }
}
