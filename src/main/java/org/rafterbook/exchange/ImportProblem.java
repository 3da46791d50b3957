package org.rafterbook.exchange;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

    private static final Pattern PLACE = Pattern.compile("(.+?\\.\\w+)(?:, line (\\d+))?: (.+)", Pattern.DOTALL);

    /** A problem whose sentence says already where it is: {@code t.csv, line 2: there are 3 cells.} */
    public static ImportProblem spoken(String sentence) {
        Matcher place = PLACE.matcher(sentence);
        if (!place.matches()) {
            return new ImportProblem("", 0, null, sentence);
        }
        int line = place.group(2) == null ? 0 : Integer.parseInt(place.group(2));
        return new ImportProblem(place.group(1), line, null, place.group(3));
    }

    /** The problem in one sentence with its place. */
    @Override
    public String toString() {
        if (file.isEmpty()) {
            return sentence;
        }
        return file + (line > 0 ? ", line " + line : "") + (column == null ? "" : ", column '" + column + "'") + ": "
                + sentence;
    }
}
