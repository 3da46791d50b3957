package org.rafterbook.work;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The demo season as plain files, packaged with the program; it comes in through the importer a flyer has. */
public final class DemoFiles {

    private DemoFiles() {}

    /** The files in the order of their index. */
    public static List<ImportFile> read() {
        List<ImportFile> files = new ArrayList<>();
        for (String name : text("index.txt").lines().toList()) {
            if (!name.isBlank()) {
                files.add(new ImportFile(name.strip(), text(name.strip())));
            }
        }
        return files;
    }

    /** Takes the demo season into a logbook. */
    public static ImportSummary into(Book book) {
        return into(book, Progress.none());
    }

    static ImportSummary into(Book book, Progress progress) {
        return book.imports().carryOut(book.imports().plan(read(), ImportChoices.none()), "", progress);
    }

    private static String text(String name) {
        try (InputStream in = DemoFiles.class.getResourceAsStream("/sample-data/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the program was packaged without sample-data/" + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
