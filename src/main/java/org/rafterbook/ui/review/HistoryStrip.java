package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.List;
import org.rafterbook.ui.chart.Axis;
import org.rafterbook.ui.chart.Chart;
import org.rafterbook.ui.chart.FlightMark;
import org.rafterbook.units.Counted;
import org.rafterbook.work.ModelReview;

/** The history along the top: one tick a flight, its mark at its time, every trim change an upright hairline. */
final class HistoryStrip {

    private static final double HEIGHT_EM = 14.24;
    private static final double LOW_EM = 9.6;

    private final ReviewModel model;
    private final Chart<String> chart = new Chart<String>("History").asStrip();

    HistoryStrip(ReviewModel model) {
        this.model = model;
        model.part(this::show, model.onlyItsFlightsProperty());
        model.changeProperty().subscribe(() -> {
            if (model.onlyItsFlightsProperty().get()) {
                show();
            }
        });
        Picking.both(model, chart);
    }

    Chart<String> node() {
        return chart;
    }

    /** Lower where the window has little height for its text size. */
    void low(boolean low) {
        chart.wish(-1, low ? LOW_EM : HEIGHT_EM);
    }

    private void show() {
        ModelReview answer = model.answer();
        StripPlan now = model.plan();
        if (answer == null || now == null) {
            chart.show(new Chart.Content<>(
                    new Axis("", "", 0, 1, (low, high, px) -> List.of()),
                    TimeAxis.of(List.of()),
                    List.of(),
                    List.of(),
                    List.of()));
            return;
        }
        chart.says("History of " + Counted.of(now.flights().size(), "flight") + " of "
                + answer.model().name());
        chart.show(new Chart.Content<>(
                new Axis("", "", 0, now.width(), now.graduation()),
                now.times(),
                List.of(new StripTurns(now.turns())),
                model.onlyItsFlightsProperty().get() ? marks(now) : now.marks(),
                List.of()));
    }

    /** The flights with those that are not of the picked change behind. */
    private List<FlightMark<String>> marks(StripPlan now) {
        List<FlightMark<String>> marks = new ArrayList<>();
        for (int i = 0; i < now.marks().size(); i++) {
            marks.add(now.marks().get(i).behind(!model.isInFront(now.flights().get(i))));
        }
        return marks;
    }
}
