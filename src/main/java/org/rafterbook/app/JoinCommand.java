package org.rafterbook.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.Counted;
import org.rafterbook.work.Book;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Takes another logbook in, all or none. */
@Command(name = "join", description = "Takes another logbook in, all or none; the other one stays as it is.")
final class JoinCommand implements Callable<Integer> {

    @Mixin
    private final Answer answer = new Answer();

    @Mixin
    private final LogbookChoice logbook = new LogbookChoice();

    @Parameters(paramLabel = "OTHER", description = "The logbook to take in.")
    private Path other = Path.of("");

    @Override
    public Integer call() {
        try (Book book = logbook.open(Mode.EXISTING)) {
            Map<String, Integer> added = book.join(other);
            if (answer.json()) {
                Map<String, Object> keys = new LinkedHashMap<>();
                keys.put("logbook", book.file().toString());
                keys.put("joined", other.toString());
                keys.put("added", added);
                answer.document(keys);
            } else {
                answer.line(
                        added.isEmpty()
                                ? "Nothing was added: all of it is there already."
                                : "Added: "
                                        + added.entrySet().stream()
                                                .map(e -> Counted.of(e.getValue(), e.getKey()))
                                                .collect(Collectors.joining(", "))
                                        + ".");
            }
        }
        return 0;
    }
}
