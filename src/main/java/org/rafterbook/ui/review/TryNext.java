package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Answer;
import org.rafterbook.review.Response;
import org.rafterbook.review.TrialProposal;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewTrial;

/** What to try next: the trials worth flying one after the other, each with what it would show, or one of one's own. */
final class TryNext {

    private final ReviewModel model;
    private final Sentences sentences = new Sentences();
    private final Label waiting = Words.small("");
    private final Action start;
    private final Action another;
    private final OwnTrial own;
    private final VBox proposed;
    private final StackPane node;
    private final Runnable opened;
    private int at;

    /**
     * @param forward brings this to the front
     * @param opened called when a trial was opened
     */
    TryNext(ReviewModel model, Keys keys, Runnable forward, Runnable opened) {
        this.model = model;
        this.opened = opened;
        start = keys.on("T", "Start this trial", this::start);
        another = keys.on("A", "Another", this::another);
        Action choose = keys.on("O", "Of your own", () -> {
            forward.run();
            choose();
        });
        own = new OwnTrial(model, keys, this::opened);
        waiting.setWrapText(true);
        waiting.setMinHeight(Label.USE_PREF_SIZE);
        // in two lines where the text is large
        FlowPane buttons =
                new FlowPane(8, 8, Buttons.primary(start), Buttons.secondary(another), Buttons.secondary(choose));
        buttons.setMinHeight(FlowPane.USE_PREF_SIZE);
        proposed = Lay.column(8, Lay.grow(sentences), waiting, buttons);
        node = new StackPane(proposed, own.node());
        node.setMinSize(0, 0);
        proposed.setMinWidth(0);
        back();
        model.part(() -> {
            at = 0;
            show();
        });
    }

    Node node() {
        return node;
    }

    private List<TrialProposal> proposals() {
        ModelReview answer = model.answer();
        return answer == null || answer.plans() == null
                ? List.of()
                : answer.plans().proposals();
    }

    private @Nullable TrialProposal proposal() {
        List<TrialProposal> all = proposals();
        return all.isEmpty() ? null : all.get(at % all.size());
    }

    private void another() {
        at++;
        show();
    }

    private void choose() {
        proposed.setVisible(false);
        own.open();
    }

    /** Leaves the form; false where it was not open. */
    boolean back() {
        boolean open = own.node().isVisible();
        own.node().setVisible(false);
        proposed.setVisible(true);
        return open;
    }

    private void start() {
        TrialProposal proposal = proposal();
        if (proposal != null) {
            model.enter(id -> model.desk().trials().open(id, proposal), trial -> opened());
        }
    }

    private void opened() {
        back();
        opened.run();
    }

    private void show() {
        ModelReview answer = model.answer();
        TrialProposal proposal = proposal();
        ReviewTrial open = answer == null ? null : answer.openTrial().orElse(null);
        start.enabledProperty().set(proposal != null && open == null);
        another.enabledProperty().set(proposals().size() > 1);
        waiting.setText(
                open == null
                        ? ""
                        : "First the open one, " + open.plan().setting().label() + " at "
                                + open.plan().a().label() + " or "
                                + open.plan().setting().show(open.plan().b()) + ": "
                                + open.state().progress() + ", not judged yet.");
        Lay.show(waiting, open != null);
        sentences.show(said(answer, proposal));
    }

    private static List<Node> said(@Nullable ModelReview answer, @Nullable TrialProposal proposal) {
        List<Node> said = new ArrayList<>();
        if (answer == null || answer.plans() == null) {
            said.add(Sentences.prose("What to try next stands here when the effects are computed."));
            return said;
        }
        if (proposal == null) {
            said.add(Sentences.verdict(
                    answer.changes().isEmpty()
                            ? "Nothing is open: no two values were changed into each other yet."
                            : "Nothing is open that a trial is worth."));
            answer.plans().settled().stream().map(Sentences::prose).forEach(said::add);
            answer.plans().advice().stream().map(Sentences::prose).forEach(said::add);
            return said;
        }
        List<String> sentences = proposal.sentences();
        said.add(Sentences.verdict(sentences.get(0)));
        sentences.stream().skip(1).map(Sentences::prose).forEach(said::add);
        if (answer.plans().responses().get(proposal.setting().key()) instanceof Answer.Known<Response> known
                && proposal.open() == TrialProposal.Open.WORTH_TRYING) {
            said.add(Sentences.prose(known.value().next().sentence()));
        }
        said.add(Sentences.small(answer.plans().advice().get(0)));
        return said;
    }
}
