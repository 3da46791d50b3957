package org.rafterbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.units.UserError;

class CsvTablesTest {

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void theSeparatorIsFoundFromTheHeadings(String separator) {
        String text = "model;time;notes, such as they are\nTeasel;10,5;\"a;b\"\n";
        String quoted = text.replace("notes, such as they are", "\"notes, such as they are\"");
        CsvTable table = CsvTables.parse(quoted.replace("10,5", "10").replace(";", separator), "t.csv");
        assertThat(table.separator()).isEqualTo(separator.charAt(0));
        assertThat(table.headings()).containsExactly("model", "time", "notes, such as they are");
        assertThat(table.rows().get(0).cells()).containsExactly("Teasel", "10", "a" + separator + "b");
    }

    @Test
    void aDecimalCommaIsNoSeparator() {
        CsvTable table = CsvTables.parse("a;b\n1,5;2,5\n3,5;4,5\n", "t.csv");
        assertThat(table.rows().get(1).cells()).containsExactly("3,5", "4,5");
    }

    @Test
    void linesAreCountedAsTheFileHasThem() {
        CsvTable table = CsvTables.parse("\na,b\n\n1,\"two\nlines\"\n,\n3,4\r\n5,6", "t.csv");
        assertThat(table.headingLine()).isEqualTo(2);
        assertThat(table.rows()).extracting(CsvTable.Row::line).containsExactly(4, 7, 8);
        assertThat(table.rows().get(0).cells()).containsExactly("1", "two\nlines");
    }

    @Test
    void aLineThatNamesTheSeparatorIsNotARow() {
        CsvTable table = CsvTables.parse("sep=;\na;b,c\n1;2\n", "t.csv");
        assertThat(table.headings()).containsExactly("a", "b,c");
        assertThat(table.headingLine()).isEqualTo(2);
        assertThat(table.rows().get(0).line()).isEqualTo(3);
    }

    @Test
    void emptyCellsAtTheEndMayBeMissing() {
        CsvTable table = CsvTables.parse("a,b,c,,\n1\n1,2,3,,,\n", "t.csv");
        assertThat(table.headings()).containsExactly("a", "b", "c");
        assertThat(table.rows().get(0).cells()).containsExactly("1", "", "");
        assertThat(table.rows().get(1).cells()).containsExactly("1", "2", "3");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a,b\n1,2,3\n|t.csv, line 2: there are 3 cells but 2 headings; the cell '3' has none.",
                "a,,b\n1,2,3\n|t.csv, line 1: column 2 has no heading.",
                "a,b,A\n1,2,3\n|t.csv, line 1: the heading 'A' stands twice.",
                "a,b\n1,2\n\"3,4\n5,6\n|t.csv, line 3: a quotation mark is opened here or below and not closed as it"
                        + " should be.",
                "\n  \n|t.csv is empty; a table begins with a line of headings.",
                "|t.csv is empty; a table begins with a line of headings."
            })
    void whatIsNoTableIsRefusedWithItsLine(String textAndSentence) {
        int bar = textAndSentence.lastIndexOf('|');
        assertThatThrownBy(() -> CsvTables.parse(textAndSentence.substring(0, bar), "t.csv"))
                .isInstanceOf(UserError.class)
                .hasMessage(textAndSentence.substring(bar + 1));
    }

    @Test
    void byteOrderMarksAndBothUnicodesAreRead(@TempDir Path folder) throws IOException {
        Path utf8 = folder.resolve("utf8.csv");
        Files.write(utf8, "\uFEFFmodel,höhe\nQ,1\n".getBytes(StandardCharsets.UTF_8));
        Path utf16 = folder.resolve("utf16.csv");
        Files.write(utf16, "\uFEFFmodel\thöhe\nQ\t1\n".getBytes(StandardCharsets.UTF_16LE));
        assertThat(CsvTables.read(utf8).headings()).containsExactly("model", "höhe");
        assertThat(CsvTables.read(utf16).headings()).containsExactly("model", "höhe");
    }

    @Test
    void bytesThatAreNoUnicodeAreRefusedWithTheirLine(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("latin.csv");
        Files.write(file, "model,notes\nQ,a\nQ,h\u00f6he\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> CsvTables.read(file))
                .isInstanceOf(UserError.class)
                .hasMessage("latin.csv, line 3: not UTF-8 text; save the file as CSV UTF-8 and read it again.");
    }
}
