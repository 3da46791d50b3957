package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.rafterbook.review.TrialStatement;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewTrial;

/** Trials open and closed: of an open one how far it is, of a judged one what it says; the newest first. */
final class TrialsPanel {

    private final ReviewModel model;
    private final Runnable forward;
    private final Sentences sentences = new Sentences();
    private final Field<String> why = Field.words("Why before all are flown").prompt("hall closed");
    private final Action end;
    private final HBox ending;
    private final VBox node;
    private boolean asking;

    /**
     * @param forward brings this to the front
     */
    TrialsPanel(ReviewModel model, Keys keys, Runnable forward) {
        this.model = model;
        this.forward = forward;
        end = keys.on("X", "End the trial", this::end);
        ending = Lay.row(8, Buttons.secondary(end), Lay.grow(why));
        node = Lay.column(8, Lay.grow(sentences), ending);
        why.input().setOnAction(event -> judge());
        Lay.show(why, false);
        model.part(this::show);
    }

    VBox node() {
        return node;
    }

    /** Ends an open trial; one that is not complete is asked for its reason first, which may stay empty. */
    private void end() {
        ModelReview answer = model.answer();
        boolean complete = answer != null
                && answer.openTrial().filter(t -> t.state().isComplete()).isPresent();
        if (complete || asking) {
            judge();
        } else {
            forward.run();
            ask(true);
            why.fill("");
            why.edit();
        }
    }

    private void judge() {
        String said = why.typed();
        ask(false);
        model.enter(id -> model.desk().trials().judge(id, said), trial -> {});
    }

    /** Leaves the question; false where nothing was asked. */
    boolean back() {
        boolean was = asking;
        ask(false);
        return was;
    }

    private void ask(boolean on) {
        asking = on;
        Lay.show(why, on);
    }

    private void show() {
        ModelReview answer = model.answer();
        List<ReviewTrial> trials = new ArrayList<>(answer == null ? List.of() : answer.trials());
        Collections.reverse(trials);
        boolean open = trials.stream().anyMatch(ReviewTrial::isOpen);
        end.enabledProperty().set(open);
        Lay.show(ending, open);
        end.labelProperty()
                .set(
                        trials.stream().anyMatch(t -> t.isOpen() && t.state().isComplete())
                                ? "Judge the trial"
                                : "End the trial");
        List<Node> said = new ArrayList<>();
        for (ReviewTrial trial : trials) {
            TrialStatement statement = trial.statement();
            if (statement == null) {
                said.add(Sentences.verdict(
                        trial.plan().title() + ", " + trial.state().progress()));
                trial.state().sentences().stream().map(Sentences::prose).forEach(said::add);
                said.add(Sentences.small(
                        trial.plan().orderInWords() + " " + trial.plan().judgedWhen()));
            } else {
                said.add(Sentences.verdict(statement.sentences().get(0)));
                statement.sentences().stream().skip(1).map(Sentences::prose).forEach(said::add);
            }
            said.add(Lay.hairline());
        }
        if (said.isEmpty()) {
            said.add(Words.led(
                    "No trial yet.", "One is started under \u201cWhat to try next\u201d and flown in the Hall."));
        }
        sentences.show(said);
    }
}
