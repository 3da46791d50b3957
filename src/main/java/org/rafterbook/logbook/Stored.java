package org.rafterbook.logbook;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import org.jspecify.annotations.Nullable;

/** Values as columns hold them: text, Long, Double or null. */
final class Stored {

    private Stored() {}

    static @Nullable Object get(ResultSet rows, int index) throws SQLException {
        Object value = rows.getObject(index);
        return value instanceof Integer whole ? (Object) whole.longValue() : value;
    }

    static void set(PreparedStatement statement, int index, @Nullable Object value) throws SQLException {
        if (value == null) {
            statement.setNull(index, Types.NULL);
        } else if (value instanceof Double number) {
            statement.setDouble(index, number);
        } else if (value instanceof Long whole) {
            statement.setLong(index, whole);
        } else {
            statement.setString(index, (String) value);
        }
    }
}
