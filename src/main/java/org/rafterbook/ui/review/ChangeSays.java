package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewChange;
import org.rafterbook.work.ReviewWords;

/** What the flights say of the picked trim change, the verdict first. */
final class ChangeSays {

    private final ReviewModel model;
    private final Sentences sentences = new Sentences();

    ChangeSays(ReviewModel model) {
        this.model = model;
        model.part(this::show, model.changeProperty(), model.stoppedProperty());
    }

    Sentences node() {
        return sentences;
    }

    private void show() {
        ModelReview answer = model.answer();
        ReviewChange change = model.changeProperty().get();
        List<Node> said = new ArrayList<>();
        if (answer == null || change == null) {
            said.add(Sentences.prose(
                    answer != null && answer.changes().isEmpty()
                            ? "Once a setting was changed, what the flights tell about it stands here."
                            : "Pick a trim change above; what its flights can tell stands here."));
        } else {
            if (!answer.isComplete()) {
                said.add(Sentences.prose(
                        model.stoppedProperty().get()
                                ? "The effects were not computed: press C to have them."
                                : "The effects are being computed; the same-day comparison is here already."));
            }
            List<String> all = ReviewWords.sentences(change);
            said.add(Sentences.verdict(all.get(0)));
            all.stream().skip(1).map(Sentences::prose).forEach(said::add);
        }
        sentences.show(said);
    }
}
