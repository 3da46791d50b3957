package org.rafterbook.ui.bench;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.rafterbook.airframe.Model;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Rigged;

/** The left column: which model, its rig strip, its sketches, and what to do with the version looked at. */
final class StripPane {

    private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");
    private static final int MOST_SKETCHES = 4;

    private final BenchModel model;
    private final Sheet sheet = new Sheet();
    private final ChoiceField<Model> models = new ChoiceField<>("Model", Model::name);
    private final RigStrip strip;
    private final VBox sketches = Lay.column(0);
    private final VBox sketchBlock;
    private final ProgressRule progress = new ProgressRule();

    /**
     * @param choose opens the list of models
     * @param actions the main action first
     */
    StripPane(BenchModel model, ZoneId zone, Action choose, Action compareSketches, List<Action> actions) {
        this.model = model;
        strip = new RigStrip(zone, model::lookAt);
        models.onChosen(chosen -> {
            model.choose(chosen);
            if (sheet.getScene() != null) {
                sheet.getScene().getRoot().requestFocus();
            }
        });
        models.key(choose);
        Sheet.Section head = new Sheet.Section("Rig strip", "newest on top");
        Sheet.Section drawn = new Sheet.Section("Sketches", "never flown");
        sketches.getStyleClass().add("sketches");
        sketchBlock = new VBox(Lay.hairline(), drawn, sketches, new VBox(Buttons.link(compareSketches)));
        VBox buttons = Lay.column(8);
        for (int i = 0; i < actions.size(); i++) {
            var button = i == 0 ? Buttons.primary(actions.get(i)) : Buttons.secondary(actions.get(i));
            button.getStyleClass().add("wide");
            button.setMaxWidth(Double.MAX_VALUE);
            buttons.getChildren().add(button);
        }
        sheet.section(models);
        sheet.add(Lay.grow(new VBox(head, strip.node())));
        sheet.getChildren().add(sketchBlock);
        sheet.section(buttons, progress);
        sheet.getStyleClass().add("bench-left");
    }

    Node node() {
        return sheet;
    }

    /** How far the computing of every version is. */
    ProgressRule progress() {
        return progress;
    }

    void open() {
        models.open();
    }

    void show(BenchDesk.Bench bench) {
        Rigged shown = BenchModel.shown(bench);
        models.offer(bench.models(), bench.now().model());
        int at = bench.models().indexOf(bench.now().model()) + 1;
        models.quietly(
                bench.models().size() == 1 ? "" : at + " of " + bench.models().size());
        strip.show(bench.strip(), shown);
        Lay.show(sketchBlock, !bench.sketches().isEmpty());
        List<Node> rows = new ArrayList<>();
        for (BenchDesk.Sketch sketch : bench.sketches()) {
            if (rows.size() < MOST_SKETCHES || same(sketch.rigged(), shown)) {
                rows.add(row(sketch, same(sketch.rigged(), shown)));
            }
        }
        sketches.getChildren().setAll(rows);
    }

    private static boolean same(Rigged a, Rigged b) {
        return a.version().id().equals(b.version().id());
    }

    private Node row(BenchDesk.Sketch sketch, boolean here) {
        String changes = sketch.changes().stream().map(RigStrip::to).collect(Collectors.joining(", "));
        Label words = Words.small(changes.isEmpty() ? "other geometry" : changes);
        words.setMinWidth(0);
        var head = RigStrip.head(sketch.rigged(), 0);
        head.getChildren().remove(head.getChildren().size() - 1);
        head.getChildren().add(words);
        head.getStyleClass().add("sketch-row");
        head.pseudoClassStateChanged(HERE, here);
        head.setOnMouseClicked(event -> model.lookAt(sketch.rigged()));
        return head;
    }

    /** The row above (-1) or below (1): the strip first, then the sketches. */
    void step(int step) {
        BenchDesk.Bench bench = model.bench().get();
        if (bench == null) {
            return;
        }
        Rigged shown = BenchModel.shown(bench);
        List<Rigged> drawn =
                bench.sketches().stream().map(BenchDesk.Sketch::rigged).toList();
        int at = -1;
        for (int i = 0; i < drawn.size(); i++) {
            at = same(drawn.get(i), shown) ? i : at;
        }
        int to = at + step;
        if (at < 0 && !strip.step(step) && step > 0 && !drawn.isEmpty()) {
            model.lookAt(drawn.get(0));
        } else if (at == 0 && step < 0) {
            strip.pickLast();
        } else if (at >= 0 && to < drawn.size()) {
            model.lookAt(drawn.get(to));
        }
    }
}
