package org.rafterbook.app;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.rafterbook.logbook.Mode;
import org.rafterbook.work.Book;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Checks that a logbook is sound. */
@Command(name = "check", description = "Integrity of a logbook.")
final class CheckCommand implements Callable<Integer> {

    @Mixin
    private final Answer answer = new Answer();

    @Mixin
    private final LogbookChoice logbook = new LogbookChoice();

    @Override
    public Integer call() {
        try (Book book = logbook.open(Mode.READ_ONLY)) {
            List<String> found = book.check();
            if (answer.json()) {
                Map<String, Object> keys = new LinkedHashMap<>();
                keys.put("sound", found.isEmpty());
                keys.put("problems", found);
                answer.document(keys);
            } else if (found.isEmpty()) {
                answer.line("The logbook is sound.");
            } else {
                found.forEach(answer::line);
            }
            return found.isEmpty() ? 0 : 1;
        }
    }
}
