package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.chart.Axis;
import org.rafterbook.ui.chart.Chart;
import org.rafterbook.ui.chart.FlightMark;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewPoint;
import org.rafterbook.work.ReviewWords;

/** The history along the top: one tick a flight, its mark at its time, every trim change an upright hairline. */
final class HistoryStrip {

    private static final double HEIGHT_EM = 14.24;
    private static final double LOW_EM = 9.6;

    private final ReviewModel model;
    private final Chart<String> chart = new Chart<String>("History").asStrip();
    private @Nullable StripPlan plan;

    HistoryStrip(ReviewModel model) {
        this.model = model;
        model.answerProperty().subscribe(answer -> {
            plan = answer == null ? null : StripPlan.of(answer);
            show();
        });
        model.changeProperty().subscribe(this::show);
        model.onlyItsFlightsProperty().subscribe(this::show);
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
        StripPlan now = plan;
        if (answer == null || now == null) {
            chart.show(new Chart.Content<>(
                    new Axis("", "", 0, 1, (low, high, px) -> List.of()),
                    TimeAxis.of(List.of()),
                    List.of(),
                    List.of(),
                    List.of()));
            return;
        }
        chart.says("History of " + ReviewWords.count(now.flights().size(), "flight") + " of "
                + answer.model().name());
        Axis times = TimeAxis.of(now.flights().stream()
                .filter(p -> p.flight().counts())
                .map(FlightMarks::seconds)
                .toList());
        List<FlightMark<String>> marks = new ArrayList<>();
        for (int i = 0; i < now.flights().size(); i++) {
            ReviewPoint point = now.flights().get(i);
            double seconds = Math.max(times.low(), Math.min(times.high(), FlightMarks.seconds(point)));
            marks.add(FlightMarks.at(now.places()[i], seconds, point, model.isInFront(point)));
        }
        chart.show(new Chart.Content<>(
                new Axis("", "", 0, now.width(), now.graduation()),
                times,
                List.of(new StripTurns(now.turns())),
                marks,
                List.of()));
    }
}
