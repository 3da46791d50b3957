package org.rafterbook.work;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.rafterbook.review.Answer;
import org.rafterbook.review.Response;
import org.rafterbook.review.SeasonPlans;
import org.rafterbook.review.TrialProposal;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;

/** The review as text to read, model by model. */
public final class ReviewText {

    private final StringBuilder text = new StringBuilder();

    private ReviewText() {}

    /** The text of these reviews. */
    public static String of(List<ModelReview> reviews) {
        ReviewText text = new ReviewText();
        for (ModelReview review : reviews) {
            text.model(review);
        }
        return reviews.isEmpty() ? "No flights yet: log one, or import a table.\n" : text.text.toString();
    }

    private void model(ModelReview review) {
        if (text.length() > 0) {
            text.append('\n');
        }
        text.append(review.model().name()).append('\n');
        ReviewWords.basis(review).forEach(this::head);
        ReviewWords.leftOut(review).forEach(this::head);
        if (review.changes().isEmpty()) {
            text.append("  No setting was changed yet, so there is nothing to compare.\n");
        }
        review.changesToTell().forEach(change -> item(ReviewWords.sentences(change)));
        if (review.plans() != null) {
            head("Time against margin and settings");
            curves(review, review.plans());
            head("What to try next");
            List<TrialProposal> proposals = review.plans().proposals();
            proposals.forEach(proposal -> item(proposal.sentences()));
            review.plans().settled().forEach(sentence -> item(List.of(sentence)));
            if (proposals.isEmpty()) {
                item(review.plans().advice());
            }
        }
        if (review.ceiling() != null) {
            head("Chance to touch");
            item(List.of(touching(review.ceiling())));
        }
        if (!review.trials().isEmpty()) {
            head("Trials");
            review.trials().forEach(trial -> item(trial(trial)));
        }
    }

    private void head(String words) {
        text.append("  ").append(words).append('\n');
    }

    private void item(List<String> sentences) {
        String lead = "- ";
        for (String sentence : sentences) {
            text.append("  ").append(lead).append(sentence).append('\n');
            lead = "  ";
        }
    }

    /** What each curve says or why there is none, a reason that holds for several once. */
    private void curves(ModelReview review, SeasonPlans plans) {
        Set<List<String>> said = new LinkedHashSet<>();
        said.add(curve(review, plans.margin()));
        plans.responses().values().forEach(answer -> said.add(curve(review, answer)));
        said.forEach(this::item);
    }

    private static List<String> curve(ModelReview review, Answer<Response> answer) {
        if (answer instanceof Answer.Known<Response> known) {
            return review.sentences(known.value());
        }
        return List.of(((Answer.CannotTell<Response>) answer).sentence());
    }

    private static String touching(Answer<TouchRisk> answer) {
        return answer instanceof Answer.Known<TouchRisk> known
                ? known.value().limit().name() + ", with " + known.value().trim() + ": "
                        + known.value().ceiling().sentence(new QuantityFormat(DisplayUnits.METRIC))
                : ((Answer.CannotTell<TouchRisk>) answer).sentence();
    }

    private static List<String> trial(ReviewTrial trial) {
        if (trial.statement() != null) {
            return trial.statement().sentences();
        }
        List<String> open = new ArrayList<>();
        open.add(trial.plan().title() + ", " + trial.state().progress() + ".");
        open.addAll(trial.state().sentences());
        return open;
    }
}
