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
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;

/** One connection and its prepared statements; for one thread at a time. Failures come out as UserErrors. */
final class Sql implements AutoCloseable {

    /** Makes something of the current row. */
    @FunctionalInterface
    interface Row<T> {
        T read(ResultSet rows) throws SQLException;
    }

    private final Connection connection;
    private final Map<String, PreparedStatement> prepared = new HashMap<>();

    private boolean writing;

    /** Why the entry under way can no longer be kept; SQLite may have ended its transaction already. */
    private @Nullable UserError broken;

    Sql(Connection connection) {
        this.connection = connection;
    }

    /** Runs the work in a transaction that writes: when this returns it is on disk, when it throws nothing of it is. */
    <T extends @Nullable Object> T entry(Function<Sql, T> work) {
        writing = true;
        return transaction("BEGIN IMMEDIATE", work);
    }

    /** Runs the work on the state of one moment. */
    <T extends @Nullable Object> T snapshot(Function<Sql, T> work) {
        writing = false;
        return transaction("BEGIN", work);
    }

    private <T extends @Nullable Object> T transaction(String begin, Function<Sql, T> work) {
        broken = null;
        execute(begin);
        try {
            T result = work.apply(this);
            execute("COMMIT");
            return result;
        } catch (Throwable e) {
            rollBack(e);
            throw e;
        }
    }

    private void rollBack(Throwable cause) {
        broken = null;
        try {
            execute("ROLLBACK");
        } catch (UserError e) {
            // SQLite has already rolled back by itself after some failures, such as a full disk.
            cause.addSuppressed(e);
        }
        broken = null;
    }

    /** All rows; parameters are text, Long, Double or null. */
    <T> List<T> list(String sql, Row<T> row, @Nullable Object... parameters) {
        List<T> all = new ArrayList<>();
        try (ResultSet rows = bound(sql, parameters).executeQuery()) {
            while (rows.next()) {
                all.add(row.read(rows));
            }
        } catch (SQLException e) {
            throw failed(sql, e);
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

    /** Runs a change. */
    void run(String sql, @Nullable Object... parameters) {
        try {
            bound(sql, parameters).executeUpdate();
        } catch (SQLException e) {
            throw failed(sql, e);
        }
    }

    /** Runs a statement that is not worth preparing: a transaction's bounds, a pragma. */
    void execute(String sql) {
        if (broken != null) {
            throw broken;
        }
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw failed(e);
        }
    }

    private PreparedStatement bound(String sql, @Nullable Object... parameters) throws SQLException {
        if (broken != null) {
            throw broken;
        }
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

    /** The driver closes a statement after some failures, so that it is prepared again for the next time. */
    private UserError failed(String sql, SQLException e) {
        try (PreparedStatement failed = prepared.remove(sql)) {
            return failed(e);
        } catch (SQLException closing) {
            e.addSuppressed(closing);
            return failed(e);
        }
    }

    private UserError failed(SQLException e) {
        UserError error = Failures.of(e);
        if (writing && error.kind() == UserError.Kind.COULD_NOT) {
            broken = error;
        }
        return error;
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
