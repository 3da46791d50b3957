package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rafterbook.units.UserError;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

class FailuresTest {

    @ParameterizedTest
    @CsvSource({
        "SQLITE_FULL, The disk is full",
        "SQLITE_IOERR_WRITE, The disk could not be read or written",
        "SQLITE_IOERR_FSYNC, The disk could not be read or written",
        "SQLITE_CORRUPT_INDEX, The logbook's file is damaged",
        "SQLITE_BUSY_SNAPSHOT, Another program is holding the logbook",
        "SQLITE_READONLY_DBMOVED, The logbook's file is read-only",
        "SQLITE_CANTOPEN_ISDIR, The logbook's file cannot be opened",
        "SQLITE_NOMEM, The logbook could not do this: SQLite said SQLITE_NOMEM"
    })
    void whatTheMachineCouldNotDoGetsASentence(SQLiteErrorCode code, String sentence) {
        SQLiteException cause = new SQLiteException("[" + code + "] raw words (of SQLite)", code);
        UserError error = Failures.of(cause);
        assertThat(error.sentence()).startsWith(sentence).endsWith(".").doesNotContain("raw words");
        assertThat(error.kind()).isEqualTo(UserError.Kind.COULD_NOT);
        assertThat(error).hasCause(cause);
    }
}
