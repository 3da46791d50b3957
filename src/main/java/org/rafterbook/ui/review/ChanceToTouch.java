package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Answer;
import org.rafterbook.review.Ceiling;
import org.rafterbook.ui.chart.Axis;
import org.rafterbook.ui.chart.Chart;
import org.rafterbook.ui.chart.Frame;
import org.rafterbook.ui.chart.Layer;
import org.rafterbook.ui.chart.Layers;
import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.TouchRisk;

/** The chance to touch what is in the way against launch torque, and the torque for the chance the flyer takes. */
final class ChanceToTouch {

    private final ReviewModel model;
    private final QuantityFormat format;
    private final Chart<String> chart = new Chart<>("Chance to touch");
    private final Label empty = Words.prose("");
    private final Sheet.Section section;
    private final Sheet sheet = new Sheet();

    ChanceToTouch(ReviewModel model, QuantityFormat format) {
        this.model = model;
        this.format = format;
        empty.setMinHeight(0);
        StackPane drawn = new StackPane(chart, empty);
        drawn.setAlignment(Pos.TOP_LEFT);
        drawn.setMinSize(0, 0);
        section = sheet.section("Chance to touch", "", Lay.grow(drawn));
        section.getStyleClass().add("chart-section");
        Lay.grow(section);
        sheet.getStyleClass().add("chance");
        model.part(this::show);
    }

    Sheet node() {
        return sheet;
    }

    Sheet.Section section() {
        return section;
    }

    /** Takes the next chance of the list. */
    void takeNext() {
        TouchRisk risk = risk();
        if (risk != null) {
            model.enter(id -> model.desk().takeChance(risk.next()), chance -> model.load());
        }
    }

    private @Nullable TouchRisk risk() {
        ModelReview answer = model.answer();
        return answer != null && answer.ceiling() instanceof Answer.Known<TouchRisk> known ? known.value() : null;
    }

    private void show() {
        ModelReview answer = model.answer();
        TouchRisk risk = risk();
        chart.setVisible(risk != null);
        empty.setText(
                answer == null || risk != null
                        ? ""
                        : answer.ceiling() instanceof Answer.CannotTell<TouchRisk> open
                                ? open.sentence()
                                : "The chance to touch stands here when it is computed.");
        if (risk == null) {
            section.aside("");
            return;
        }
        Ceiling ceiling = risk.ceiling();
        section.aside("n = " + ceiling.flights() + ", " + risk.limit().name() + " "
                + format.text(Quantity.HEIGHT, risk.limit().heightM()) + ", band 90 %");
        chart.says("Chance to touch against launch torque, with " + risk.trim() + ". " + ceiling.sentence(format) + " "
                + ceiling.counts() + ".");
        chart.show(content(risk));
    }

    private Chart.Content<String> content(TouchRisk risk) {
        Ceiling ceiling = risk.ceiling();
        double unit = Quantity.TORQUE.unit(format.units()).fromSi(1);
        double low = ceiling.flownNm().low() * unit;
        double high = ceiling.flownNm().high() * unit;
        double room = Math.max(0.14 * (high - low), 0.02 * high);
        List<Ceiling.Risk> drawn =
                ceiling.curve().stream().filter(Ceiling.Risk::drawn).toList();
        double[] x = drawn.stream().mapToDouble(r -> r.torqueNm() * unit).toArray();
        List<Layer> below = new ArrayList<>();
        below.add(Layers.band(
                x,
                drawn.stream().mapToDouble(r -> 100 * r.low()).toArray(),
                drawn.stream().mapToDouble(r -> 100 * r.high()).toArray()));
        below.add(Layers.curve(
                x, drawn.stream().mapToDouble(r -> 100 * r.chance()).toArray()));
        List<Layer> above = new ArrayList<>();
        above.add(frame -> told(frame, ceiling, unit));
        Ceiling.Advice advice = risk.advice();
        if (advice != null) {
            above.add(frame -> advice(frame, advice.torqueNm() * unit, risk));
        }
        return new Chart.Content<String>(
                        Axis.of(
                                "launch torque with " + risk.trim(),
                                format.unitOf(Quantity.TORQUE),
                                low - room,
                                high + room),
                        Axis.of("", "%", 0, 100),
                        below,
                        List.of(),
                        above)
                .flown(low, high);
    }

    /** Flights that came as high stand at the top, those that stayed below heap up at the foot. */
    private static void told(Frame frame, Ceiling ceiling, double unit) {
        Pen pen = frame.pen();
        int[] heap = new int[(int) frame.right() + 2];
        for (Ceiling.Told flight : ceiling.told()) {
            double x = frame.px(frame.x().clamp(flight.torqueNm() * unit));
            if (flight.reached()) {
                pen.mark(MarkShape.CIRCLE, Token.INK_2, MarkStyle.AT_LEAST, x, frame.top() + pen.px(26), 7);
            } else {
                int column = (int) Math.round(x / pen.px(7));
                double y = frame.bottom() - pen.px(5) - heap[column]++ * pen.px(6);
                pen.mark(MarkShape.CIRCLE, Token.INK_2, MarkStyle.CLEAN, column * pen.px(7), y, 5);
            }
        }
        pen.text(
                ceiling.counts(),
                frame.px(frame.flownLow()) + pen.px(6),
                frame.top() + pen.px(8),
                TextRole.SMALL,
                Token.INK_2,
                HPos.LEFT,
                VPos.CENTER);
    }

    private void advice(Frame frame, double torque, TouchRisk risk) {
        Pen pen = frame.pen();
        double x = frame.px(frame.x().clamp(torque));
        double y = frame.py(100 * risk.chosen());
        pen.stroke(Token.ACCENT, 1.4).dashed(4, 3).line(frame.left(), y, x, y).line(x, y, x, frame.bottom());
        pen.mark(MarkShape.DIAMOND, Token.ACCENT, MarkStyle.CLEAN, x, y, 9);
        String words = TouchRisk.inHundred(risk.chosen()) + ": "
                + format.text(
                        Quantity.TORQUE,
                        torque / Quantity.TORQUE.unit(format.units()).fromSi(1),
                        2);
        double wide = pen.textWidth(words, TextRole.SMALL_BOLD) + pen.px(12);
        boolean left = x - wide > frame.left();
        pen.textOn(
                Token.SHEET,
                words,
                left ? x - pen.px(8) : x + pen.px(8),
                y - pen.px(10),
                TextRole.SMALL_BOLD,
                Token.ACCENT,
                left ? HPos.RIGHT : HPos.LEFT,
                VPos.CENTER);
    }
}
