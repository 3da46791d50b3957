package org.rafterbook.logbook;

import org.jspecify.annotations.Nullable;

/** Writes within one entry, and reads what the entry has written so far. */
public interface Writer extends Reader {

    /**
     * Adds a record.
     *
     * @return the record as stored: instants are cut to the millisecond
     */
    <R extends Record> R insert(R row);

    /**
     * Puts a record in the place of the one with its id; a UserError when there is none. An equal record leaves no
     * trace in the change log.
     *
     * @return the record as stored
     */
    <R extends Record> R update(R row);

    /** Marks a record as gone; a UserError when there is none. */
    <R extends Record> void remove(Class<R> type, String id);

    /** Keeps a value under a name, or forgets it; logged, but not offered for undo. */
    void preference(String name, @Nullable String value);
}
