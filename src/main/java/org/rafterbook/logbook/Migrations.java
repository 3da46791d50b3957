package org.rafterbook.logbook;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.callback.Callback;
import org.flywaydb.core.api.callback.Context;
import org.flywaydb.core.api.callback.Event;
import org.rafterbook.units.UserError;

/**
 * Brings a logbook's tables to the edition this program knows. The edition of a file is its {@code user_version}, so that
 * a logbook that is up to date opens without loading Flyway.
 *
 * @param edition the newest known
 * @param locations where the migrations lie
 */
record Migrations(int edition, List<String> locations) {

    /** Marks a file as a logbook of ours: "Raft" in ASCII. */
    static final int APPLICATION_ID = 0x52616674;

    /** Raised together with each new file under {@code migrations}. */
    static final Migrations STANDARD = new Migrations(2, List.of("classpath:migrations"));

    /** Held here because loggers are kept weakly. */
    private static final Logger FLYWAY = Logger.getLogger("org.flywaydb");

    static {
        FLYWAY.setLevel(Level.WARNING);
    }

    /** Makes all tables in a file that is not there yet. */
    void make(Path file) {
        migrate(file);
    }

    /** Changes the tables of a logbook of an older edition, all or nothing, and keeps a copy of it as it was. */
    void bringUpToDate(Path file, int from) {
        Path copy = Backup.beside(file, "edition " + from);
        Backup.copy(() -> Connections.reader(file), copy);
        try {
            migrate(file);
        } catch (FlywayException e) {
            throw UserError.couldNot(
                    "The logbook " + file + " could not be brought up to date and is as it was; a copy of it is "
                            + copy.getFileName() + ".",
                    e);
        }
    }

    private void migrate(Path file) {
        Flyway.configure(Migrations.class.getClassLoader())
                .dataSource(Connections.migrating(file))
                .target(String.valueOf(edition))
                .locations(locations.toArray(new String[0]))
                .failOnMissingLocations(true)
                // One transaction for all, together with the callback after each.
                .group(true)
                .callbacks(new AfterEach())
                .load()
                .migrate();
    }

    /** Within the migration's transaction: refuses rows that point nowhere and notes the edition. */
    private static final class AfterEach implements Callback {

        @Override
        public boolean supports(Event event, Context context) {
            return event == Event.AFTER_EACH_MIGRATE;
        }

        @Override
        public boolean canHandleInTransaction(Event event, Context context) {
            return true;
        }

        @Override
        public void handle(Event event, Context context) {
            String edition = context.getMigrationInfo().getVersion().getVersion();
            Connection connection = context.getConnection();
            try (Statement statement = connection.createStatement()) {
                try (ResultSet dangling = statement.executeQuery("PRAGMA foreign_key_check")) {
                    if (dangling.next()) {
                        throw new FlywayException(
                                "after edition " + edition + " rows of " + dangling.getString(1) + " point nowhere");
                    }
                }
                statement.execute("PRAGMA application_id = " + APPLICATION_ID);
                statement.execute("PRAGMA user_version = " + Integer.parseInt(edition));
            } catch (SQLException e) {
                throw new FlywayException(e);
            }
        }

        @Override
        public String getCallbackName() {
            return "edition";
        }
    }
}
