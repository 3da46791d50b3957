package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Version;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.review.TrialPlan;
import org.rafterbook.review.TrialState;
import org.rafterbook.review.TrialStatement;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.Prepared;
import org.rafterbook.work.TrialNow;

/**
 * The open trial: one slot a flight in the order drawn, what is next, and nothing of any time; once it is judged, what it
 * says.
 */
final class TrialPart {

    private static final PseudoClass NEXT = PseudoClass.getPseudoClass("next");
    private static final PseudoClass FLOWN = PseudoClass.getPseudoClass("flown");

    private final HallModel hall;
    private final TrialModel model;
    private final FlowPane slots = new FlowPane();
    private final Label next = Words.accent("");
    private final VBox sentences = Lay.column(4);
    private final Action set;
    private final Action end;
    private final Field<String> why = Field.words("Why before all are flown").prompt("hall closed");
    private final HBox buttons;
    private final Sheet.Section node;
    private boolean asking;

    TrialPart(HallModel hall, Keys keys, Followed followed) {
        this.hall = hall;
        this.model = hall.trial();
        set = keys.on("C", "Set it", model::setNext);
        end = keys.on("Z", "End the trial", this::end);
        slots.getStyleClass().add("trial-slots");
        next.setWrapText(true);
        why.input().setOnAction(event -> judge());
        Lay.show(why, false);
        buttons = Lay.row(8, Buttons.secondary(set), Buttons.secondary(end));
        node = new Sheet.Section("", "", slots, next, buttons, why, sentences);
        node.getStyleClass().addAll("chart-part", "trial-part");
        followed.follow(model.statementProperty(), this::showStatement);
        followed.follow(hall.stateProperty(), state -> showAgain());
        followed.follow(hall.landing().landedProperty(), landed -> showAgain());
    }

    Sheet.Section node() {
        return node;
    }

    private void end() {
        TrialNow now = model.now();
        if (now == null || asking || now.state().isComplete()) {
            judge();
        } else {
            asking = true;
            Lay.show(why, true);
            why.fill("");
            why.edit();
        }
    }

    private void judge() {
        HallForm.leave(node);
        model.end(
                why.typed(),
                () -> {
                    asking = false;
                    Lay.show(why, false);
                    why.fill("");
                },
                why::refuse);
    }

    private void showAgain() {
        HallData data = hall.data();
        if (data != null) {
            show(data);
        }
    }

    void show(HallData data) {
        Prepared prepared = data.prepared();
        TrialNow now = prepared.trial();
        Lay.show(node, now != null || prepared.judged() != null);
        set.enabledProperty().set(now != null && now.nextSide() != null && !now.set());
        end.enabledProperty().set(now != null);
        Lay.show(slots, now != null);
        Lay.show(next, now != null);
        Lay.show(buttons, now != null);
        if (now == null) {
            showStatement(model.statementProperty().get());
            return;
        }
        Model flown = prepared.rigged() == null ? null : prepared.rigged().model();
        node.caption(now.plan().title());
        node.aside(now.state().progress());
        fill(now, flown);
        next.setText(next(now, prepared) + (enterSets(data, now) ? goesOn(now) : ""));
        set.labelProperty().set(now.set() ? "Set" : "Set it");
        end.labelProperty().set(now.state().isComplete() ? "Judge the trial" : "End the trial");
        List<Node> said = new ArrayList<>();
        said.add(prose(now.plan().orderInWords()));
        now.state().sentences().stream().skip(1).map(TrialPart::prose).forEach(said::add);
        said.add(Words.hint(now.plan().judgedWhen()));
        sentences.getChildren().setAll(said);
    }

    private static String goesOn(TrialNow now) {
        return now.nextSide() == null ? "; Enter judges it" : "; Enter sets it for the next flight";
    }

    /** Whether going on from the landing takes the trial further: only from its own flight, and that the model's last. */
    private boolean enterSets(HallData data, TrialNow now) {
        LandingModel.Landed landed = hall.landing().landedProperty().get();
        FlightLine last = data.prepared().last();
        return hall.stateProperty().get() == HallState.LANDING
                && !now.set()
                && landed != null
                && last != null
                && last.flight().id().equals(landed.flightId())
                && Texts.uncounted(data, last).isEmpty();
    }

    private static Label prose(String sentence) {
        Label label = Words.prose(Words.unbroken(sentence));
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private void fill(TrialNow now, @Nullable Model flown) {
        slots.getChildren().clear();
        int at = now.state().nextSlot();
        for (int i = 0; i < now.state().slots().size(); i++) {
            TrialState.Slot slot = now.state().slots().get(i);
            Version version = now.version(slot.side());
            VBox box = new VBox();
            box.getStyleClass().add("trial-slot");
            if (version != null) {
                box.getChildren()
                        .add(new MarkView(
                                VersionMark.dealt(version.number() - 1),
                                slot.isFlown() ? MarkStyle.CLEAN : MarkStyle.OPEN));
            }
            Label name =
                    i == at ? Words.accent(name(now, slot.side(), flown)) : Words.body(name(now, slot.side(), flown));
            name.setMinWidth(Region.USE_PREF_SIZE);
            box.getChildren().add(name);
            box.getChildren().add(Lay.styled(new Label(slot.isFlown() ? "✓" : ""), "good-tick"));
            box.pseudoClassStateChanged(NEXT, i == at);
            box.pseudoClassStateChanged(FLOWN, slot.isFlown());
            slots.getChildren().add(box);
        }
    }

    /** The version's name, or before it was ever rigged the value. */
    private static String name(TrialNow now, TrialPlan.Side side, @Nullable Model flown) {
        Version version = now.version(side);
        return version == null || flown == null
                ? now.plan().setting().show(now.plan().level(side))
                : flown.letter() + version.number();
    }

    /** What is next, such as "next: t7, wing 146 mm, set". */
    static String next(TrialNow now, Prepared prepared) {
        TrialPlan.Side side = now.nextSide();
        if (side == null) {
            return "all are flown: the trial can be judged";
        }
        Version version = now.version(side);
        String name = version == null || prepared.rigged() == null
                ? ""
                : prepared.rigged().model().letter() + version.number() + ", ";
        return "next: " + name + now.words(side) + (now.set() ? ", set" : "");
    }

    private void showStatement(Optional<TrialStatement> statement) {
        HallData data = hall.data();
        if (data == null || data.prepared().trial() != null || data.prepared().judged() == null) {
            return;
        }
        node.caption("Trial judged");
        node.aside("more in Review");
        sentences
                .getChildren()
                .setAll(statement
                        .map(s -> s.sentences().stream().map(TrialPart::prose).toList())
                        .orElse(List.of(prose("What it says is being computed."))));
        if (!sentences.getChildren().isEmpty()) {
            sentences.getChildren().get(0).getStyleClass().add("bold");
        }
    }
}
