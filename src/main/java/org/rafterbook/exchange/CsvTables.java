package org.rafterbook.exchange;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.rafterbook.units.UserError;

/** Reads tables: separated by comma, semicolon or tab, quoted or not, as spreadsheets write them. */
public final class CsvTables {

    private static final String SEPARATORS = ",;\t";
    private static final String SEPARATOR_LINE = "sep=";

    private CsvTables() {}

    /**
     * Reads a table from a file.
     *
     * @throws UserError where it cannot be opened or is no table; the sentence has file and line
     */
    public static CsvTable read(Path file) {
        return parse(TextFiles.read(file), TextFiles.nameOf(file));
    }

    /**
     * Reads a table from text.
     *
     * @param file name for sentences
     */
    public static CsvTable parse(String text, String file) {
        char separator = separatorOf(text);
        List<CsvRecord> records = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .commentStrategy(CommentStrategy.NONE)
                .skipEmptyLines(true)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowUnclosedQuote(false)
                .maxBufferSize(1 << 20)
                .ofCsvRecord(text)) {
            reader.forEach(records::add);
        } catch (CsvParseException e) {
            int line = records.isEmpty()
                    ? 1
                    : (int) records.get(records.size() - 1).getStartingLineNumber() + 1;
            throw problem(file, line, "a quotation mark is opened here or below and not closed as it should be.");
        } catch (IOException e) {
            throw UserError.couldNot(file + " could not be read: " + e.getMessage() + ".", e);
        }
        if (!records.isEmpty() && namesSeparator(records.get(0))) {
            records.remove(0);
        }
        records.removeIf(record -> record.getFields().stream().allMatch(String::isBlank));
        return table(file, separator, records);
    }

    private static CsvTable table(String file, char separator, List<CsvRecord> records) {
        if (records.isEmpty()) {
            throw UserError.badInput(file + " is empty; a table begins with a line of headings.");
        }
        CsvRecord first = records.get(0);
        int headingLine = (int) first.getStartingLineNumber();
        List<String> headings = new ArrayList<>(stripped(first));
        int width = headings.size();
        while (width > 0 && headings.get(width - 1).isEmpty()) {
            width--;
        }
        List<String> named = headings.subList(0, width);
        refuseDoubles(file, headingLine, named);
        List<CsvTable.Row> rows = new ArrayList<>();
        for (CsvRecord record : records.subList(1, records.size())) {
            List<String> cells = stripped(record);
            int line = (int) record.getStartingLineNumber();
            for (int i = width; i < cells.size(); i++) {
                if (!cells.get(i).isEmpty()) {
                    throw problem(
                            file,
                            line,
                            "there are " + cells.size() + " cells but " + width + " headings; the cell '" + cells.get(i)
                                    + "' has none.");
                }
            }
            while (cells.size() < width) {
                cells.add("");
            }
            rows.add(new CsvTable.Row(line, cells.subList(0, width)));
        }
        return new CsvTable(file, separator, named, headingLine, rows);
    }

    private static void refuseDoubles(String file, int line, List<String> headings) {
        Set<String> seen = new HashSet<>();
        for (String heading : headings) {
            if (heading.isEmpty()) {
                throw problem(file, line, "column " + (headings.indexOf(heading) + 1) + " has no heading.");
            }
            if (!seen.add(heading.toLowerCase(Locale.ROOT))) {
                throw problem(file, line, "the heading '" + heading + "' stands twice.");
            }
        }
    }

    private static List<String> stripped(CsvRecord record) {
        List<String> cells = new ArrayList<>(record.getFieldCount());
        for (String field : record.getFields()) {
            cells.add(field.strip());
        }
        return cells;
    }

    private static UserError problem(String file, int line, String sentence) {
        return UserError.badInput(new ImportProblem(file, line, null, sentence).toString());
    }

    /** Some spreadsheets name the separator in a first line of its own. */
    private static boolean namesSeparator(CsvRecord record) {
        return record.getField(0).startsWith(SEPARATOR_LINE)
                && record.getFields().stream().skip(1).allMatch(String::isEmpty);
    }

    /** The separator that occurs most often in the headings, outside quotation marks. */
    private static char separatorOf(String text) {
        if (text.startsWith(SEPARATOR_LINE) && text.length() > SEPARATOR_LINE.length()) {
            char named = text.charAt(SEPARATOR_LINE.length());
            if (SEPARATORS.indexOf(named) >= 0) {
                return named;
            }
        }
        int[] count = new int[SEPARATORS.length()];
        boolean quoted = false;
        boolean begun = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == '\n' || c == '\r')) {
                if (begun) {
                    break;
                }
            } else if (!quoted && SEPARATORS.indexOf(c) >= 0) {
                count[SEPARATORS.indexOf(c)]++;
            }
            begun |= !Character.isWhitespace(c);
        }
        int best = 0;
        for (int i = 1; i < count.length; i++) {
            best = count[i] > count[best] ? i : best;
        }
        return SEPARATORS.charAt(best);
    }
}
