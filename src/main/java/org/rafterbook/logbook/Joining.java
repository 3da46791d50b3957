package org.rafterbook.logbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;

/**
 * Takes all rows of another logbook in: those with new ids are added, those whose ids are here must agree in every column.
 * Where two copies of one logbook went on separately with the same model, session or motor they are refused, since nobody can
 * say in which order that happened.
 */
final class Joining {

    /** What is counted in order within something else: two rows of one number went on separately. */
    private record Counted(String table, String within, String withinTable, String withinName) {}

    private static final List<Counted> COUNTED = List.of(
            new Counted("rigging", "model_id", "model", "name"),
            new Counted("flight", "session_id", "session", "local_date"),
            new Counted("wind", "motor_id", "motor", "name"));

    private final RowWriter writer;
    private final Map<String, Integer> added = new LinkedHashMap<>();

    private Joining(RowWriter writer) {
        this.writer = writer;
    }

    /** All rows of a logbook, gone or not, by table, in an order in which they can be added. */
    static Map<String, List<Map<String, @Nullable Object>>> rows(Sql sql) {
        Map<String, List<Map<String, @Nullable Object>>> all = new LinkedHashMap<>();
        for (Class<? extends Record> type : Tables.TYPES) {
            RecordTable<?> table = Tables.of(type);
            List<String> names = table.columnNames();
            String columns = names.stream().map(name -> '"' + name + '"').collect(Collectors.joining(", "));
            all.put(table.name(), sql.list("SELECT " + columns + " FROM \"" + table.name() + "\" ORDER BY id", row -> {
                Map<String, @Nullable Object> values = new LinkedHashMap<>();
                for (int i = 0; i < names.size(); i++) {
                    values.put(names.get(i), Stored.get(row, i + 1));
                }
                return values;
            }));
        }
        return all;
    }

    /**
     * Adds what is not here yet, within the entry of the writer.
     *
     * @return how many rows were added, by the words for their table
     * @throws UserError where the two logbooks contradict each other
     */
    static Map<String, Integer> take(RowWriter writer, Map<String, List<Map<String, @Nullable Object>>> rows) {
        Joining joining = new Joining(writer);
        List<String> before = joining.twice();
        // a rigging names the one before it, which may come later
        writer.sql().execute("PRAGMA defer_foreign_keys = ON");
        rows.forEach((name, all) -> all.forEach(row -> joining.row(Objects.requireNonNull(Tables.named(name)), row)));
        List<String> after = joining.twice();
        after.removeAll(before);
        if (!after.isEmpty()) {
            throw UserError.badInput("Both logbooks went on separately with " + after.get(0)
                    + "; they cannot be joined. Nothing was taken in.");
        }
        return joining.added;
    }

    private void row(RecordTable<?> table, Map<String, @Nullable Object> there) {
        Map<String, @Nullable Object> here = writer.stored(table, String.valueOf(there.get("id")));
        if (here == null) {
            add(table, null, there);
            return;
        }
        for (Map.Entry<String, @Nullable Object> column : there.entrySet()) {
            if (!column.getKey().equals(RecordTable.GONE)
                    && !Objects.equals(column.getValue(), here.get(column.getKey()))) {
                throw UserError.badInput(
                        "The " + table.words() + " " + name(there) + " is not alike in the two logbooks ("
                                + column.getKey().replace('_', ' ') + "). Nothing was taken in.");
            }
        }
        if (here.get(RecordTable.GONE) != null && there.get(RecordTable.GONE) == null) {
            add(table, here, there);
        }
    }

    private void add(
            RecordTable<?> table, @Nullable Map<String, @Nullable Object> before, Map<String, @Nullable Object> row) {
        try {
            writer.put(table, before, row);
        } catch (UserError e) {
            throw e.kind() != UserError.Kind.BAD_INPUT
                    ? e
                    : new UserError(
                            UserError.Kind.BAD_INPUT,
                            "The " + table.words() + " " + name(row) + " of the other logbook cannot be taken in: "
                                    + e.sentence() + " Nothing was taken in.",
                            e);
        }
        if (row.get(RecordTable.GONE) == null) {
            added.merge(table.words(), 1, Integer::sum);
        }
    }

    private static String name(Map<String, @Nullable Object> row) {
        Object name = row.get("name") != null ? row.get("name") : row.get("label");
        return name == null ? String.valueOf(row.get("id")) : "'" + name + "'";
    }

    /** What holds two rows of one number, in words. */
    private List<String> twice() {
        TreeSet<String> found = new TreeSet<>();
        for (Counted counted : COUNTED) {
            found.addAll(writer.sql()
                    .list(
                            "SELECT w.\"" + counted.withinName() + "\", t.ordinal FROM \"" + counted.table()
                                    + "\" t JOIN \"" + counted.withinTable() + "\" w ON w.id = t.\"" + counted.within()
                                    + "\" WHERE t.gone_at IS NULL GROUP BY w.id, t.ordinal HAVING count(*) > 1",
                            row -> "the " + counted.withinTable() + " " + row.getString(1) + " (" + counted.table()
                                    + " " + row.getLong(2) + ")"));
        }
        return new ArrayList<>(found);
    }
}
