package org.rafterbook.exchange;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** Writes tables as the program's own files have them: comma, quotation marks only where needed, one kind of line end. */
final class CsvText {

    private CsvText() {}

    static String of(List<List<String>> lines) {
        StringWriter text = new StringWriter();
        try (CsvWriter writer =
                CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            lines.forEach(writer::writeRecord);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
