package org.rafterbook.logbook;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One connection and its prepared statements; for one thread at a time. Failures come out as UserErrors. */
final class Sql implements AutoCloseable {

    /** Makes something of the current row. */
    @FunctionalInterface
    interface Row<T> {
        T read(ResultSet rows) throws SQLException;
    }

    private final Connection connection;
    private final Map<String, PreparedStatement> prepared = new HashMap<>();

    Sql(Connection connection) {
        this.connection = connection;
    }

    /** All rows; parameters are text, Long, Double or null. */
    <T> List<T> list(String sql, Row<T> row, @Nullable Object... parameters) {
        List<T> all = new ArrayList<>();
        try (ResultSet rows = bound(sql, parameters).executeQuery()) {
            while (rows.next()) {
                all.add(row.read(rows));
            }
        } catch (SQLException e) {
            throw Failures.of(e);
        }
        return all;
    }

    /** The first row, null where there is none. */
    <T> @Nullable T first(String sql, Row<T> row, @Nullable Object... parameters) {
        List<T> all = list(sql, row, parameters);
        return all.isEmpty() ? null : all.get(0);
    }

    long number(String sql, @Nullable Object... parameters) {
        Long first = first(sql, rows -> rows.getLong(1), parameters);
        return first == null ? 0 : first;
    }

    /** Runs a change and answers how many rows it met. */
    int run(String sql, @Nullable Object... parameters) {
        try {
            return bound(sql, parameters).executeUpdate();
        } catch (SQLException e) {
            throw Failures.of(e);
        }
    }

    /** Runs a statement that is not worth preparing: a transaction's bounds, a pragma. */
    void execute(String sql) {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw Failures.of(e);
        }
    }

    private PreparedStatement bound(String sql, @Nullable Object... parameters) throws SQLException {
        PreparedStatement statement = prepared.get(sql);
        if (statement == null) {
            statement = connection.prepareStatement(sql);
            prepared.put(sql, statement);
        }
        for (int i = 0; i < parameters.length; i++) {
            Stored.set(statement, i + 1, parameters[i]);
        }
        return statement;
    }

    @Override
    public void close() {
        try {
            for (PreparedStatement statement : prepared.values()) {
                statement.close();
            }
            connection.close();
        } catch (SQLException e) {
            throw Failures.of(e);
        }
    }
}
