package org.rafterbook.logbook;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;
import org.sqlite.SQLiteErrorCode;

/** Says which reference of a row leads nowhere, which SQLite itself does not. */
final class References {

    /** A column that names a row of another table. */
    record Reference(String column, String target) {}

    private References() {}

    /** A failure to write a row, with the row's dangling reference named where that is the cause. */
    static UserError named(Sql sql, RecordTable<?> table, Map<String, @Nullable Object> row, UserError failure) {
        if (Failures.code(failure) != SQLiteErrorCode.SQLITE_CONSTRAINT_FOREIGNKEY) {
            return failure;
        }
        for (Reference reference : of(sql, table)) {
            Object id = row.get(reference.column());
            if (id != null && sql.number("SELECT count(*) FROM \"" + reference.target() + "\" WHERE id = ?", id) == 0) {
                return new UserError(
                        UserError.Kind.BAD_INPUT,
                        "The " + table.words() + " names a "
                                + reference.target().replace('_', ' ') + " that is not in the logbook.",
                        failure.getCause());
            }
        }
        return failure;
    }

    static List<Reference> of(Sql sql, RecordTable<?> table) {
        return sql.list(
                "SELECT \"from\", \"table\" FROM pragma_foreign_key_list(?)",
                rows -> new Reference(rows.getString(1), rows.getString(2)),
                table.name());
    }
}
