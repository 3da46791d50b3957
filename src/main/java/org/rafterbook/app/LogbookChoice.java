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
        return file == null ? demo() : Book.open(file, mode, Clock.systemDefaultZone());
    }

    boolean named() {
        return file != null || demo;
    }

    /** True where the logbook named is not there yet, so that a writing command makes it. */
    boolean isToBeMade() {
        return file != null && !Files.exists(file);
    }

    /** Takes away the logbook that was made for something that then could not be done. */
    void forget() {
        try {
            for (String name : new String[] {"", "-wal", "-shm", ".lock"}) {
                Files.deleteIfExists(Path.of(file + name));
            }
        } catch (IOException e) {
            throw UserError.couldNot("The empty logbook " + file + " could not be removed again.", e);
        }
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
            Book book = Book.open(demo, Mode.CREATE, Clock.systemDefaultZone());
            DemoFiles.into(book);
            return book;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
