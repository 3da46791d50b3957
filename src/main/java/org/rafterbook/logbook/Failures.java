package org.rafterbook.logbook;

import java.sql.SQLException;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rafterbook.units.UserError;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * Makes sentences of SQLite's failures. The checks and triggers of the migrations carry their own sentence as name or
 * message; what SQLite names by columns is put into words here.
 */
final class Failures {

    static final String DAMAGED = "The logbook's file is damaged. Keep it as it is and go on with the newest backup.";

    private static final Pattern CHECK = Pattern.compile("CHECK constraint failed: (.*?)\\)?$", Pattern.DOTALL);
    private static final Pattern UNIQUE = Pattern.compile("UNIQUE constraint failed: ([^)]*)");
    private static final Pattern MISSING = Pattern.compile("NOT NULL constraint failed: (\\w+)\\.(\\w+)");
    private static final Pattern RAISED =
            Pattern.compile("^\\[SQLITE_CONSTRAINT_TRIGGER\\][^(]*\\((.*)\\)$", Pattern.DOTALL);

    private static final Map<String, String> TWICE = Map.of(
            "model.name", "There is already a model of this name.",
            "setting_def.model_id, setting_def.label", "The model already has a setting of this name.",
            "setting_def.model_id, setting_def.path", "The model already has a setting for this place of its sheet.",
            "version.digest", "These settings are already a version.",
            "version.model_id, version.number", "The model already has a version of this number.",
            "setting_value.version_id, setting_value.setting_id", "The version already has a value of this setting.",
            "trial.model_id", "A trial is already open for this model; judge or end it first.",
            "rubber_batch.name", "There is already a batch of this name.",
            "motor.name", "There is already a motor of this name.",
            "venue.name", "There is already a venue of this name.");

    private Failures() {}

    static UserError of(SQLException e) {
        SQLiteErrorCode code = code(e);
        String message = String.valueOf(e.getMessage());
        return switch (code) {
            case SQLITE_CONSTRAINT_CHECK -> bad(found(CHECK, message), e);
            case SQLITE_CONSTRAINT_TRIGGER -> bad(found(RAISED, message), e);
            case SQLITE_CONSTRAINT_UNIQUE, SQLITE_CONSTRAINT_PRIMARYKEY -> bad(twice(found(UNIQUE, message)), e);
            case SQLITE_CONSTRAINT_NOTNULL -> bad(missing(message), e);
            case SQLITE_CONSTRAINT_FOREIGNKEY -> bad("The entry names something that is not in the logbook.", e);
            case SQLITE_TOOBIG -> bad("The text is too long for the logbook.", e);
            default -> UserError.couldNot(sentence(SQLiteErrorCode.getErrorCode(code.code & 0xFF)), e);
        };
    }

    /** The sentence for what the machine could not do, by SQLite's primary code. */
    private static String sentence(SQLiteErrorCode primary) {
        return switch (primary) {
            case SQLITE_FULL -> "The disk is full: nothing of this entry was kept. Make room and enter it again.";
            case SQLITE_IOERR -> "The disk could not be read or written: nothing of this entry was kept.";
            case SQLITE_CORRUPT, SQLITE_NOTADB -> DAMAGED;
            case SQLITE_BUSY, SQLITE_LOCKED -> "Another program is holding the logbook. Try again in a moment.";
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_AUTH -> "The logbook's file is read-only: nothing was written.";
            case SQLITE_CANTOPEN -> "The logbook's file cannot be opened.";
            default -> "The logbook could not do this: SQLite said " + primary.name() + ".";
        };
    }

    static SQLiteErrorCode code(SQLException e) {
        return e instanceof SQLiteException sqlite ? sqlite.getResultCode() : SQLiteErrorCode.UNKNOWN_ERROR;
    }

    static SQLiteErrorCode code(UserError e) {
        return e.getCause() instanceof SQLException sql ? code(sql) : SQLiteErrorCode.UNKNOWN_ERROR;
    }

    private static UserError bad(String sentence, SQLException e) {
        return new UserError(UserError.Kind.BAD_INPUT, sentence, e);
    }

    private static String twice(String columns) {
        String known = TWICE.get(columns);
        int dot = columns.indexOf('.');
        return known != null
                ? known
                : "The logbook already holds this "
                        + columns.substring(0, Math.max(dot, 0)).replace('_', ' ') + ".";
    }

    private static String missing(String message) {
        Matcher matcher = MISSING.matcher(message);
        return matcher.find()
                ? "The " + Column.words(matcher.group(1)) + " lacks its " + Column.words(matcher.group(2)) + "."
                : message;
    }

    private static String found(Pattern pattern, String message) {
        Matcher matcher = pattern.matcher(message);
        return matcher.find() ? matcher.group(1) : message;
    }
}
