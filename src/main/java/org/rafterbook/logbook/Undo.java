package org.rafterbook.logbook;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;

/** Takes back the newest entry not yet taken back. */
final class Undo {

    /** An entry as the log has it. */
    record Logged(String entry, String why, Instant at) {}

    private record Change(
            String table,
            String rowId,
            @Nullable String before,
            @Nullable String after) {}

    private Undo() {}

    /** What undo would take back now, null when there is nothing. */
    static @Nullable Logged next(Sql sql) {
        return sql.first(
                "SELECT c.entry, c.why, c.at FROM change_log c WHERE c.undoes IS NULL AND c.table_name <> ?"
                        + " AND NOT EXISTS (SELECT 1 FROM change_log u WHERE u.undoes = c.entry)"
                        + " ORDER BY c.id DESC LIMIT 1",
                rows -> new Logged(rows.getString(1), rows.getString(2), Codec.instant(rows.getString(3))),
                ChangeLog.PREFERENCE);
    }

    static Undone run(Sql sql) {
        Logged logged = next(sql);
        if (logged == null) {
            throw UserError.badInput("There is nothing to undo.");
        }
        RowWriter writer = new RowWriter(sql, new ChangeLog(sql, logged.why(), logged.entry()));
        List<Change> changes = sql.list(
                "SELECT table_name, row_id, before, after FROM change_log WHERE entry = ? AND table_name <> ?"
                        + " ORDER BY id DESC",
                rows -> new Change(rows.getString(1), rows.getString(2), rows.getString(3), rows.getString(4)),
                logged.entry(),
                ChangeLog.PREFERENCE);
        changes.forEach(change -> takeBack(writer, change, logged));
        return new Undone(logged.why(), logged.at());
    }

    private static void takeBack(RowWriter writer, Change change, Logged logged) {
        RecordTable<?> table = Tables.named(change.table());
        Map<String, @Nullable Object> now = table == null ? null : writer.stored(table, change.rowId());
        if (table == null || now == null || change.after() == null || !agree(now, Json.read(change.after()))) {
            throw UserError.badInput("'" + logged.why() + "' cannot be undone: what it wrote was changed afterwards.");
        }
        Map<String, @Nullable Object> then = RowWriter.goneNow(now);
        if (change.before() != null) {
            then.putAll(Json.read(change.before()));
            // A column that came with a later migration keeps its value; one that went with it stays away.
            then.keySet().retainAll(now.keySet());
        }
        writer.put(table, now, then);
    }

    private static boolean agree(Map<String, @Nullable Object> now, Map<String, @Nullable Object> logged) {
        return logged.entrySet().stream()
                .filter(value -> now.containsKey(value.getKey()))
                .allMatch(value -> Objects.equals(now.get(value.getKey()), value.getValue()));
    }
}
