package org.rafterbook.app;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Book;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.Progress;
import org.rafterbook.work.ReviewDesk;
import org.rafterbook.work.ReviewDocument;
import org.rafterbook.work.ReviewText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the Review place shows: which trim change raised the time. */
@Command(name = "review", description = "Which trim change raised the time, by how much and how sure.")
final class ReviewCommand implements Callable<Integer> {

    @Mixin
    private final Answer answer = new Answer();

    @Mixin
    private final LogbookChoice logbook = new LogbookChoice();

    @Option(names = "--model", description = "Only this model.")
    private @Nullable String model;

    @Override
    public Integer call() {
        try (Book book = logbook.open(Mode.READ_ONLY)) {
            List<ModelReview> answers = answers(book, model);
            if (answer.json()) {
                answer.document(ReviewDocument.of(answers));
            } else {
                answer.line(ReviewText.of(answers));
            }
        }
        return 0;
    }

    /** The review of each model asked for. */
    static List<ModelReview> answers(Book book, @Nullable String name) {
        ReviewDesk desk = book.review();
        List<Model> models = desk.models().stream()
                .filter(m -> name == null || m.name().equalsIgnoreCase(name))
                .toList();
        if (name != null && models.isEmpty()) {
            throw UserError.badInput("There is no model named '" + name + "' in this logbook.");
        }
        return models.stream()
                .map(m -> desk.review(m.id(), true, Progress.none()))
                .toList();
    }
}
