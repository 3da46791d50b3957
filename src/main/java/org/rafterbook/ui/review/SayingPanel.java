package org.rafterbook.ui.review;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewChange;
import org.rafterbook.work.ReviewPoint;
import org.rafterbook.work.ReviewWords;

/** What is said of the picked change, the verdict first, or what the whole review rests on. */
final class SayingPanel extends VBox {

    private final Label caption = Words.caption("");
    private final VBox sentences = Lay.column(4);

    private SayingPanel() {
        getStyleClass().add("section");
        ScrollPane scroll = new ScrollPane(sentences);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        getChildren().addAll(caption, Lay.grow(scroll));
    }

    static SayingPanel ofChange(ReviewModel model) {
        SayingPanel panel = new SayingPanel();
        panel.caption.setText("What the flights say");
        model.changeProperty()
                .subscribe(change -> panel.change(model.answerProperty().get(), change));
        return panel;
    }

    static SayingPanel ofBasis(ReviewModel model) {
        SayingPanel panel = new SayingPanel();
        panel.caption.setText("What this rests on");
        model.answerProperty().subscribe(answer -> {
            if (answer == null) {
                panel.show(List.of());
                return;
            }
            panel.show(ReviewWords.basis(answer));
            for (ReviewPoint point : answer.leftOut()) {
                panel.sentences.getChildren().add(small("left out: " + FlightWords.line(point)));
            }
        });
        return panel;
    }

    private void change(
            @org.jspecify.annotations.Nullable ModelReview answer,
            @org.jspecify.annotations.Nullable ReviewChange change) {
        if (answer == null || change == null) {
            show(List.of());
            sentences
                    .getChildren()
                    .add(Words.prose("Pick a trim change above; what its flights can tell stands here."));
            return;
        }
        List<String> said = ReviewWords.sentences(change);
        show(said.subList(1, said.size()));
        Label verdict = Words.bold(said.get(0));
        verdict.setWrapText(true);
        verdict.setMinHeight(USE_PREF_SIZE);
        sentences.getChildren().add(0, verdict);
    }

    private void show(List<String> said) {
        sentences.getChildren().setAll(said.stream().map(SayingPanel::prose).toList());
    }

    private static Label prose(String sentence) {
        Label label = Words.prose(sentence);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }

    private static Label small(String sentence) {
        Label label = Words.small(sentence);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
