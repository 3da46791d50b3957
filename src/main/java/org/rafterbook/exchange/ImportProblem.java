package org.rafterbook.exchange;

import org.jspecify.annotations.Nullable;

/**
 * Something in a file that cannot be taken; one of them and nothing of the import is kept.
 *
 * @param file the file's name
 * @param line its line, from 1; 0 where the whole file is meant
 * @param column heading of the column as the file writes it, null where the whole line is meant
 * @param sentence what is wrong, with a full stop
 */
public record ImportProblem(String file, int line, @Nullable String column, String sentence) {

    /** The problem in one sentence with its place. */
    @Override
    public String toString() {
        return file + (line > 0 ? ", line " + line : "") + (column == null ? "" : ", column '" + column + "'") + ": "
                + sentence;
    }
}
