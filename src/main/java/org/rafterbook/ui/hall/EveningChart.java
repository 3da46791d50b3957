package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.HPos;
import org.rafterbook.flight.Flight;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.review.ExpectedFlight;
import org.rafterbook.review.Outcome;
import org.rafterbook.ui.chart.Axis;
import org.rafterbook.ui.chart.Chart;
import org.rafterbook.ui.chart.FlightMark;
import org.rafterbook.ui.chart.Frame;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.Layer;
import org.rafterbook.ui.chart.Layers;
import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.look.Token;
import org.rafterbook.work.Evening;
import org.rafterbook.work.Outlook;

/** The evening's times in flying order, and the flight to expect next with its band. */
final class EveningChart {

    private static final double ROOM = 0.12;

    private final HallModel hall;
    private final Chart<String> chart = new Chart<>("Times of this evening");
    private final Sheet.Section node;

    EveningChart(HallModel hall, Followed followed) {
        this.hall = hall;
        chart.setFocusTraversable(false);
        chart.getStyleClass().add("evening-chart");
        chart.onOpen(this::open);
        node = new Sheet.Section("Times of the evening", "", chart);
        node.getStyleClass().add("chart-part");
        followed.follow(hall.outlookProperty(), outlook -> {
            HallData data = hall.data();
            if (data != null) {
                show(data);
            }
        });
    }

    Sheet.Section node() {
        return node;
    }

    private void open(String flightId) {
        HallData data = hall.data();
        FlightLine line = data == null ? null : data.evening().find(flightId);
        if (line != null) {
            hall.landing().open(line);
        }
    }

    void show(HallData data) {
        List<FlightMark<String>> marks = marks(data.evening());
        ExpectedFlight expected =
                hall.outlookProperty().get().map(Outlook::expected).orElse(null);
        List<Double> seconds = new ArrayList<>(marks.stream().map(FlightMark::y).toList());
        if (expected != null) {
            seconds.add(expected.bandS().low());
            seconds.add(expected.bandS().high());
        }
        node.aside(marks.isEmpty() ? "" : "n = " + marks.size());
        Lay.show(node, !marks.isEmpty());
        if (marks.isEmpty()) {
            return;
        }
        double low = seconds.stream().mapToDouble(s -> s).min().orElseThrow();
        double high = seconds.stream().mapToDouble(s -> s).max().orElseThrow();
        double room = Math.max(ROOM * (high - low), 0.03 * high);
        int next = data.prepared().ordinal();
        List<Layer> above = expected == null ? List.of() : List.of(frame -> expected(frame, next, expected));
        chart.show(new Chart.Content<>(
                new Axis("", "", 0.4, next + 0.7, Graduation.every(1, 1, v -> String.valueOf(Math.round(v)))),
                Axis.minutes(Math.max(0, low - room), high + room),
                List.of(),
                marks,
                above));
        chart.says("Times of this evening, " + marks.size() + " flights");
    }

    private static List<FlightMark<String>> marks(Evening evening) {
        List<FlightMark<String>> marks = new ArrayList<>();
        for (FlightLine line : evening.flights()) {
            Flight flight = line.flight();
            Outcome outcome = evening.outcome(flight);
            if (flight.durationS() != null) {
                marks.add(new FlightMark<>(
                        flight.id(),
                        flight.ordinal(),
                        outcome.countsS(),
                        VersionMark.dealt(
                                line.version() == null ? 0 : line.version().number() - 1),
                        outcome.kind() == Outcome.Kind.AT_LEAST,
                        flight.partialFraction() < 1,
                        outcome.kind() == Outcome.Kind.LEFT_OUT || flight.leftOutWhy() != null,
                        false,
                        "flight " + flight.ordinal() + ", " + Texts.time(evening, flight)
                                + (flight.leftOutWhy() == null ? "" : ", flagged to be left out")));
            }
        }
        return marks;
    }

    private static void expected(Frame frame, int ordinal, ExpectedFlight expected) {
        Pen pen = frame.pen();
        double x = frame.px(ordinal);
        double low = frame.py(expected.bandS().low());
        double high = frame.py(expected.bandS().high());
        double cap = pen.px(5);
        pen.stroke(Token.ACCENT, 2).line(x, low, x, high);
        pen.line(x - cap, low, x + cap, low).line(x - cap, high, x + cap, high);
        pen.mark(MarkShape.DIAMOND, Token.ACCENT, MarkStyle.OPEN, x, frame.py(expected.durationS()), 9);
        Layers.words(ordinal - 0.25, expected.durationS(), "expected", TextRole.SMALL, Token.ACCENT, HPos.RIGHT)
                .paint(frame);
    }
}
