package org.rafterbook.ui.hall;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.FoldingColumn;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.units.QuantityFormat;

/** Beside the flight in hand: the evening's flights as a list and as a chart, and the open trial. */
final class EveningSide {

    private final EveningPane list;
    private final EveningChart chart;
    private final TrialPart trial;
    private final Action unfold;
    private final VBox charted;
    private final FoldingColumn column = new FoldingColumn();
    private final Sheet sheet = new Sheet();

    /**
     * @param preparing keys while a flight is prepared, with which the chart unfolds and the trial goes on
     */
    EveningSide(HallModel hall, Keys preparing, QuantityFormat format, Followed followed) {
        list = new EveningPane(hall, format);
        chart = new EveningChart(hall, followed);
        trial = new TrialPart(hall, preparing, followed);
        charted = new VBox(Lay.hairline(), chart.node());
        unfold = preparing.on("Y", "Times of the evening", () -> column.unfold(charted));
        column.addGrowing(list.node());
        sheet.add(Lay.grow(column));
        sheet.getStyleClass().add("evening");
    }

    Node node() {
        return sheet;
    }

    /** Adds what need not be in the first frame of the window; called once. */
    void complete() {
        VBox tried = new VBox(Lay.hairline(), trial.node());
        tried.managedProperty().bind(trial.node().visibleProperty());
        column.add(charted, 1, unfold).add(tried);
    }

    /** What shows a reading, part by part. */
    List<Consumer<HallData>> parts() {
        return List.of(data -> list.show(data.evening()), chart::show, data -> {
            trial.show(data);
            column.requestLayout();
        });
    }
}
