package org.rafterbook.app;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import org.rafterbook.logbook.Mode;
import org.rafterbook.work.Book;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes a copy of a logbook; never over an existing file. */
@Command(name = "backup", description = "A copy of the logbook.")
final class BackupCommand implements Callable<Integer> {

    @Mixin
    private final Answer answer = new Answer();

    @Mixin
    private final LogbookChoice logbook = new LogbookChoice();

    @Option(names = "--to", required = true, paramLabel = "FILE", description = "The copy to write.")
    private Path to = Path.of("");

    @Override
    public Integer call() {
        try (Book book = logbook.open(Mode.READ_ONLY)) {
            book.backup(to);
        }
        if (answer.json()) {
            answer.document(Map.of("backup", to.toString()));
        } else {
            answer.line("Copied to " + to + ".");
        }
        return 0;
    }
}
