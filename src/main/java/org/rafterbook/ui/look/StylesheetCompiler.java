package org.rafterbook.ui.look;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.css.Stylesheet;

/**
 * Run by the build: puts each stylesheet beside itself in JavaFX's binary form, which JavaFX prefers to the text. The
 * window is up a tenth of a second earlier, since the parser's classes are not loaded.
 */
public final class StylesheetCompiler {

    private StylesheetCompiler() {}

    /** Converts every stylesheet in the folder that is the only argument. */
    public static void main(String[] args) throws IOException {
        try (DirectoryStream<Path> sheets = Files.newDirectoryStream(Path.of(args[0]), "*.css")) {
            for (Path sheet : sheets) {
                String name = sheet.getFileName().toString();
                Path binary = sheet.resolveSibling(name.substring(0, name.length() - ".css".length()) + ".bss");
                Stylesheet.convertToBinary(sheet.toFile(), binary.toFile());
            }
        }
    }
}
