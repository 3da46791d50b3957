package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.GoBack;
import org.rafterbook.work.ModelReview;

/** Versions to go back to with the reason each is offered; best times are none. */
final class GoBackPanel {

    private final ReviewModel model;
    private final Keys keys;
    private final Sentences sentences = new Sentences();

    GoBackPanel(ReviewModel model, Keys keys) {
        this.model = model;
        this.keys = keys;
        model.part(this::show);
    }

    Sentences node() {
        return sentences;
    }

    private void show() {
        ModelReview answer = model.answer();
        List<Node> rows = new ArrayList<>();
        for (GoBack choice : answer == null ? List.<GoBack>of() : answer.back()) {
            Label why = Sentences.prose(choice.why());
            why.setMinWidth(0);
            Label name = Words.bold(choice.name());
            name.setMinWidth(Label.USE_PREF_SIZE);
            rows.add(Lay.row(
                    8,
                    new MarkView(FlightMarks.of(choice.version().number())),
                    name,
                    Lay.grow(why),
                    Buttons.secondary(keys.action("Set it", () -> set(choice)))));
        }
        if (rows.isEmpty()) {
            rows.add(Sentences.prose(
                    answer == null || !answer.isComplete()
                            ? "Versions to go back to stand here when the effects are computed."
                            : "There is nothing to go back to: the model stands at its only version, or at the last of"
                                    + " which nothing better is known."));
        }
        sentences.show(rows);
    }

    private void set(GoBack choice) {
        model.enter(id -> model.desk().backTo(choice.version().id(), choice.name()), rigged -> {});
    }
}
