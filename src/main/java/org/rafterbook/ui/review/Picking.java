package org.rafterbook.ui.review;

import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.chart.Chart;
import org.rafterbook.work.ReviewPoint;

/** Keeps the flight picked on a chart and the one picked in the place the same. */
final class Picking {

    private Picking() {}

    /** A flight pointed at with the mouse is only named; one clicked, or reached with the arrow keys, is picked. */
    static void both(ReviewModel model, Chart<String> chart) {
        chart.onOpen(model::pickFlight);
        chart.pickedProperty().subscribe(id -> {
            if (id != null && chart.isFocused()) {
                model.pickFlight(id);
            }
        });
        model.flightProperty().subscribe(point -> pick(chart, point));
        model.part(() -> pick(chart, model.flightProperty().get()));
    }

    private static void pick(Chart<String> chart, @Nullable ReviewPoint point) {
        chart.pick(point == null ? null : point.flight().id());
    }
}
