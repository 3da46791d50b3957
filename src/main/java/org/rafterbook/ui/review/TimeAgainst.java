package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Answer;
import org.rafterbook.review.Response;
import org.rafterbook.review.ResponsePoint;
import org.rafterbook.review.Span;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.chart.Axis;
import org.rafterbook.ui.chart.Chart;
import org.rafterbook.ui.chart.FlightMark;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.Layer;
import org.rafterbook.ui.chart.Layers;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewPoint;

/**
 * Times against the margin or a setting, one mark a flight; where three values were flown, the curve with one peak, its
 * band and where the best probably lies.
 */
final class TimeAgainst {

    private final ReviewModel model;
    private final ChoiceField<ReviewAxis> axis = new ChoiceField<>("Time against", ReviewAxis::name);
    private final Chart<String> chart = new Chart<>("Time against");
    private final Label empty = Words.prose("");
    private final Label best = Words.accent("");
    private final Label rest = Words.small("");
    private final Sheet sheet = new Sheet();
    private final Action farOff;
    private final Button look;
    private @Nullable ModelReview offered;

    TimeAgainst(ReviewModel model, Keys keys) {
        this.model = model;
        axis.onChosen(model.axisProperty()::set);
        empty.setMinHeight(0);
        for (Label label : List.of(best, rest)) {
            label.setWrapText(true);
            label.setMinHeight(Label.USE_PREF_SIZE);
        }
        best.getStyleClass().add("small-answer");
        StackPane drawn = new StackPane(chart, empty);
        drawn.setMinSize(0, 0);
        farOff = keys.on("U", "Look at a flight far off", model::pickFarOff);
        look = Buttons.secondary(farOff);
        Sheet.Section section = sheet.section(axis, Lay.grow(drawn), best, rest, look);
        section.getStyleClass().add("chart-section");
        Lay.grow(section);
        Lay.grow(sheet);
        Picking.both(model, chart);
        model.part(this::show, model.axisProperty(), model.onlyItsFlightsProperty(), model.equalTurnsProperty());
        model.changeProperty().subscribe(() -> {
            if (model.onlyItsFlightsProperty().get()) {
                show();
            }
        });
    }

    Sheet node() {
        return sheet;
    }

    ChoiceField<ReviewAxis> choice() {
        return axis;
    }

    private void offer(ModelReview answer, ReviewAxis now) {
        if (answer != offered || axis.chosen() == null || !axis.chosen().same(now)) {
            offered = answer;
            List<ReviewAxis> all = ReviewAxis.of(answer);
            axis.offer(all, all.stream().filter(a -> a.same(now)).findFirst().orElse(ReviewAxis.MARGIN));
        }
    }

    private void show() {
        ModelReview answer = model.answer();
        if (answer == null) {
            return;
        }
        ReviewAxis now = model.axisProperty().get();
        offer(answer, now);
        Answer<Response> told = now.response(answer);
        Response response = told instanceof Answer.Known<Response> known ? known.value() : null;
        boolean equal = response != null && model.equalTurnsProperty().get();
        List<FlightMark<String>> marks = marks(answer, now, equal ? response : null);
        chart.setVisible(!marks.isEmpty());
        empty.setText(marks.isEmpty() ? now.nothing(answer) : "");
        caption(answer, marks, equal ? response : null);
        if (!marks.isEmpty()) {
            Chart.Content<String> content = content(answer, now, marks, equal ? response : null);
            model.then(() -> chart.show(content));
            chart.says(marks.size() + " flights: time against " + now.name());
        }
        tell(told, response);
        int far = answer.farOff().size();
        farOff.enabledProperty().set(far > 0);
        farOff.labelProperty()
                .set(far < 2 ? "1 flight lies far off: look at it" : far + " flights lie far off: look at the next");
        Lay.show(look, far > 0);
    }

    private void caption(ModelReview answer, List<FlightMark<String>> marks, @Nullable Response curve) {
        if (marks.isEmpty()) {
            axis.quietly("");
            return;
        }
        boolean atLeast = marks.stream().anyMatch(FlightMark::atLeast);
        axis.quietly("n = " + marks.size()
                + (curve != null
                        ? ", one peak, band 90 %, at equal turns and air"
                        : answer.isComplete()
                                ? atLeast ? ", as flown, open marks \"at least\"" : ", as flown"
                                : ", curve to come"));
    }

    private void tell(@Nullable Answer<Response> told, @Nullable Response response) {
        List<String> said = response != null
                ? response.sentences()
                : told instanceof Answer.CannotTell<Response> open ? List.of("", open.sentence()) : List.of("");
        best.setText(Words.unbroken(said.get(0)));
        rest.setText(
                said.size() < 2
                        ? ""
                        : Words.unbroken(said.get(1) + (response != null && response.isDoubtful() ? doubt(said) : "")));
        Lay.show(best, !best.getText().isEmpty());
        Lay.show(rest, !rest.getText().isEmpty() && chart.isVisible());
    }

    private static String doubt(List<String> said) {
        return " " + said.get(said.size() - 1);
    }

    private List<FlightMark<String>> marks(ModelReview answer, ReviewAxis now, @Nullable Response curve) {
        Map<String, Double> corrected = new HashMap<>();
        if (curve != null) {
            for (ResponsePoint point : curve.points()) {
                corrected.put(point.flightId(), Math.exp(point.logDuration()));
            }
        }
        List<String> words = now.words(answer);
        List<FlightMark<String>> marks = new ArrayList<>();
        for (ReviewPoint point : answer.points()) {
            Double value = now.at(point);
            String word = now.word(point);
            Double seconds = curve == null
                    ? Double.valueOf(FlightMarks.seconds(point))
                    : corrected.get(point.flight().id());
            Double x = words.isEmpty() ? value : word == null ? null : Double.valueOf(words.indexOf(word));
            if (answer.enters(point) && point.timed() && x != null && seconds != null) {
                marks.add(FlightMarks.at(x, seconds, point, model.isInFront(point), model.says(point)));
            }
        }
        return marks;
    }

    private Chart.Content<String> content(
            ModelReview answer, ReviewAxis now, List<FlightMark<String>> marks, @Nullable Response curve) {
        double low = marks.stream().mapToDouble(FlightMark::x).min().orElseThrow();
        double high = marks.stream().mapToDouble(FlightMark::x).max().orElseThrow();
        double room = high > low ? 0.14 * (high - low) : 0.5;
        List<String> words = now.words(answer);
        Axis across = new Axis(
                now.name(),
                now.unit(),
                low - room,
                high + room,
                words.isEmpty() ? Graduation.numbers() : Graduation.names(words));
        List<Double> seconds = new ArrayList<>(marks.stream().map(FlightMark::y).toList());
        List<Layer> below = new ArrayList<>();
        if (curve != null) {
            below(curve, below, seconds);
        }
        Map<String, String> names = new HashMap<>();
        answer.points().forEach(p -> names.put(p.flight().id(), p.version()));
        double edge = 0.3 * room;
        Axis times = TimeAxis.of(seconds);
        List<FlightMark<String>> placed =
                marks.stream().map(m -> m.within(times.low(), times.high())).toList();
        return new Chart.Content<>(across, times, below, placed, List.of(VersionNames.of(placed, names)))
                .flown(low - edge, high + edge);
    }

    private static void below(Response curve, List<Layer> below, List<Double> seconds) {
        List<Response.CurvePoint> flown = curve.curve().stream()
                .filter(p -> curve.flown().holds(p.value()))
                .toList();
        double[] x = flown.stream().mapToDouble(Response.CurvePoint::value).toArray();
        Span best = curve.best();
        double from = Math.max(best.low(), curve.flown().low());
        double to = Math.min(best.high(), curve.flown().high());
        if (from < to
                && !(best.low() <= curve.curve().get(0).value()
                        && to == curve.flown().high())) {
            below.add(Layers.range(from, to));
        }
        below.add(Layers.band(x, exp(flown, true), exp(flown, false)));
        below.add(Layers.curve(
                x, flown.stream().mapToDouble(p -> Math.exp(p.logDuration())).toArray()));
        flown.forEach(p -> seconds.add(Math.exp(p.logDuration())));
    }

    private static double[] exp(List<Response.CurvePoint> points, boolean low) {
        return points.stream()
                .mapToDouble(p -> Math.exp(low ? p.logLow() : p.logHigh()))
                .toArray();
    }
}
