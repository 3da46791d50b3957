package org.rafterbook.logbook;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Notes one entry's changes, a line for each changed row. */
final class ChangeLog {

    /** Rows of this table are logged but never taken back. */
    static final String PREFERENCE = "preference";

    private final Sql sql;
    private final String entry = Ids.next();
    private final String at = Codec.text(Instant.now());
    private final String why;
    private final @Nullable String undoes;
    private int lines;

    /**
     * @param why the words undo says
     * @param undoes the entry this one takes back
     */
    ChangeLog(Sql sql, String why, @Nullable String undoes) {
        this.sql = sql;
        this.why = why;
        this.undoes = undoes;
    }

    /** Rows as JSON objects of their columns. */
    void add(String table, String rowId, @Nullable String before, @Nullable String after) {
        sql.run(
                "INSERT INTO change_log (entry, table_name, row_id, before, after, at, device, why, undoes)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                entry,
                table,
                rowId,
                before,
                after,
                at,
                Device.name(),
                why,
                undoes);
        lines++;
    }

    boolean isEmpty() {
        return lines == 0;
    }
}
