package org.rafterbook.app;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.Counted;
import org.rafterbook.work.Book;
import org.rafterbook.work.ExportSummary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes a logbook as plain files that import takes in again. */
@Command(name = "export", description = "The logbook as plain files and airframe sheets.")
final class ExportCommand implements Callable<Integer> {

    @Mixin
    private final Answer answer = new Answer();

    @Mixin
    private final LogbookChoice logbook = new LogbookChoice();

    @Option(names = "--to", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path to = Path.of("");

    @Option(names = "--overwrite", description = "Write over files that are there.")
    private boolean overwrite;

    @Override
    public Integer call() {
        try (Book book = logbook.open(Mode.READ_ONLY)) {
            ExportSummary summary = book.exports().write(to, overwrite);
            if (answer.json()) {
                answer.document(Map.of("files", summary.files(), "flights", summary.flights()));
            } else {
                answer.line(Counted.of(summary.flights(), "flight") + " in "
                        + Counted.of(summary.files().size(), "file") + " in " + to + ".");
                summary.remarks().forEach(answer::line);
            }
        }
        return 0;
    }
}
