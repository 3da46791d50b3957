package org.rafterbook.work;

import java.nio.file.Path;
import java.util.Locale;
import org.rafterbook.exchange.TextFiles;

/**
 * A file to take in.
 *
 * @param name its name without folders, for sentences
 * @param text what it holds
 */
public record ImportFile(String name, String text) {

    /** Reads a file; a failure is a sentence. */
    public static ImportFile of(Path file) {
        return new ImportFile(TextFiles.nameOf(file), TextFiles.read(file));
    }

    /** Whether it is an airframe sheet and no table. */
    boolean isJson() {
        return name.toLowerCase(Locale.ROOT).endsWith(".json")
                || text.stripLeading().startsWith("{");
    }
}
