package org.rafterbook.ui.hall;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.FoldingColumn;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.units.QuantityFormat;

/** Beside the flight in hand: the evening's flights as a list and as a chart, and the open trial. */
final class EveningSide {

    /** What follows the window's first frame. */
    private record Rest(EveningChart chart, TrialPart trial) {}

    private final HallModel hall;
    private final Keys preparing;
    private final Followed followed;
    private final EveningPane list;
    private final FoldingColumn column = new FoldingColumn();
    private final Sheet sheet = new Sheet();
    private @Nullable Rest rest;

    /**
     * @param preparing keys while a flight is prepared, with which the chart unfolds and the trial goes on
     */
    EveningSide(HallModel hall, Keys preparing, QuantityFormat format, Followed followed) {
        this.hall = hall;
        this.preparing = preparing;
        this.followed = followed;
        list = new EveningPane(hall, format);
        column.addGrowing(list.node());
        sheet.add(Lay.grow(column));
        sheet.getStyleClass().add("evening");
    }

    Node node() {
        return sheet;
    }

    /** Adds what need not be in the first frame of the window; called once. */
    void complete() {
        Rest added = new Rest(new EveningChart(hall, followed), new TrialPart(hall, preparing, followed));
        rest = added;
        VBox charted = new VBox(Lay.hairline(), added.chart().node());
        VBox tried = new VBox(Lay.hairline(), added.trial().node());
        tried.managedProperty().bind(added.trial().node().visibleProperty());
        column.add(charted, 1, preparing.on("Y", "Times of the evening", () -> column.unfold(charted)))
                .add(tried);
        HallData data = hall.data();
        if (data != null) {
            showChart(data);
            showTrial(data);
        }
    }

    /** What shows a reading, part by part. */
    List<Consumer<HallData>> parts() {
        return List.of(data -> list.show(data.evening()), this::showChart, this::showTrial);
    }

    private void showChart(HallData data) {
        if (rest != null) {
            rest.chart().show(data);
        }
    }

    private void showTrial(HallData data) {
        if (rest != null) {
            rest.trial().show(data);
            column.requestLayout();
        }
    }
}
