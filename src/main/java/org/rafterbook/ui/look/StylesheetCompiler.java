package org.rafterbook.ui.look;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.css.Stylesheet;

/**
 * Run by the build: puts each stylesheet beside itself in JavaFX's binary form, which JavaFX prefers to the text. The
 * window is up a tenth of a second earlier, since the parser's classes are not loaded.
 */
public final class StylesheetCompiler {

    private static final String ENDING = ".css";

    private StylesheetCompiler() {}

    /** Converts every stylesheet in and below the folder that is the only argument. */
    public static void main(String[] args) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(args[0]))) {
            List<Path> sheets =
                    files.filter(file -> file.toString().endsWith(ENDING)).toList();
            for (Path sheet : sheets) {
                String name = sheet.getFileName().toString();
                Path binary = sheet.resolveSibling(name.substring(0, name.length() - ENDING.length()) + ".bss");
                Stylesheet.convertToBinary(sheet.toFile(), binary.toFile());
            }
        }
    }
}
