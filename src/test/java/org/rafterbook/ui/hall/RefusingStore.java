package org.rafterbook.ui.hall;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;

/** A logbook's file that refuses to take anything about flights while this is open, as a full disk would. */
public final class RefusingStore implements AutoCloseable {

    private final Path file;

    public RefusingStore(Path file) {
        this.file = file;
        sql(
                "CREATE TRIGGER refuse_update BEFORE UPDATE ON flight BEGIN SELECT RAISE(ABORT, 'refused'); END",
                "CREATE TRIGGER refuse_insert BEFORE INSERT ON flight BEGIN SELECT RAISE(ABORT, 'refused'); END");
    }

    private void sql(String... statements) {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        sql("DROP TRIGGER refuse_update", "DROP TRIGGER refuse_insert");
    }
}
