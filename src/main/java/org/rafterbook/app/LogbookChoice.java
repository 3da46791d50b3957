package org.rafterbook.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Book;
import org.rafterbook.work.DemoFiles;
import picocli.CommandLine.Option;

/** Which logbook a command works on. */
final class LogbookChoice {

    @Option(names = "--logbook", paramLabel = "FILE", description = "The logbook file.")
    private @Nullable Path file;

    @Option(names = "--demo", description = "A temporary logbook of the demo season.")
    private boolean demo;

    /** Opens the logbook named; reading works beside an open window. */
    Book open(Mode mode) {
        if ((file != null) == demo) {
            throw UserError.badInput("Say which logbook: --logbook FILE, or --demo.");
        }
        return file == null ? demo() : Book.open(file, mode, Clock.systemUTC());
    }

    boolean named() {
        return file != null || demo;
    }

    /** The demo season in a temporary logbook that goes when the program ends. */
    static Book demo() {
        try {
            Path folder = Files.createTempDirectory("rafterbook-demo");
            Path demo = folder.resolve("demo.rafterbook");
            folder.toFile().deleteOnExit();
            for (String name : new String[] {"", "-wal", "-shm", ".lock"}) {
                Path.of(demo + name).toFile().deleteOnExit();
            }
            Book book = Book.open(demo, Mode.CREATE, Clock.systemUTC());
            DemoFiles.into(book);
            return book;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
