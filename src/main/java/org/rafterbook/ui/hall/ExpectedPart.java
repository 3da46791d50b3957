package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Answer;
import org.rafterbook.review.ExpectedFlight;
import org.rafterbook.review.Span;
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
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.HeightMark;
import org.rafterbook.work.Outlook;

/** The flight to expect, drawn from launch to landing under what hangs in the hall; where no height is known, in words. */
final class ExpectedPart {

    private static final int PLACES = 61;

    /** Where the top of the climb lies while nobody noted it, as a share of the flight. */
    private static final double USUAL_TOP = 0.35;

    private final HallModel model;
    private final QuantityFormat format;
    private final Chart<String> chart = new Chart<>("Expected flight");
    private final Label words = Words.prose("");
    private final Sheet.Section node;

    ExpectedPart(HallModel model, QuantityFormat format, Followed followed) {
        this.model = model;
        this.format = format;
        chart.setFocusTraversable(false);
        words.setMinHeight(0);
        StackPane drawn = new StackPane(chart, words);
        drawn.setAlignment(Pos.TOP_LEFT);
        drawn.getStyleClass().add("expected-picture");
        node = new Sheet.Section("Expected flight", "", Lay.grow(drawn));
        node.getStyleClass().add("expected-part");
        followed.follow(model.outlookProperty(), outlook -> show());
        followed.follow(model.computingProperty(), computing -> show());
    }

    Sheet.Section node() {
        return node;
    }

    private void show() {
        Optional<Outlook> outlook = model.outlookProperty().get();
        HallData data = model.data();
        ExpectedFlight expected = outlook.map(Outlook::expected).orElse(null);
        ExpectedFlight.PeakHeight peak = outlook.map(Outlook::peak).orElse(null);
        chart.setVisible(peak != null);
        String said = peak != null || outlook.isEmpty()
                ? model.computingProperty().get() ? "What to expect is being computed." : ""
                : expected != null
                        ? String.join(" ", expected.sentences(format))
                        : ((Answer.CannotTell<ExpectedFlight>) outlook.get().flight()).sentence();
        words.setText(Words.unbroken(said));
        node.aside(
                expected == null
                        ? ""
                        : "from " + expected.flights() + " flights of " + expected.model() + ", band 90 %");
        if (expected != null && peak != null && data != null) {
            chart.says(String.join(" ", expected.sentences(format)));
            chart.show(content(
                    expected,
                    peak,
                    outlook.map(Outlook::topShare).orElse(null),
                    data.evening().heights()));
        }
    }

    private Chart.Content<String> content(
            ExpectedFlight expected,
            ExpectedFlight.PeakHeight peak,
            @Nullable Double topShare,
            List<HeightMark> heights) {
        double top = topShare == null ? USUAL_TOP : topShare;
        double end = expected.bandS().high();
        double[] x = new double[PLACES];
        double[] flown = new double[PLACES];
        double[] middle = new double[PLACES];
        double[] low = new double[PLACES];
        double[] high = new double[PLACES];
        for (int i = 0; i < PLACES; i++) {
            x[i] = end * i / (PLACES - 1);
            flown[i] = expected.durationS() * i / (PLACES - 1);
            middle[i] = height(flown[i], expected.durationS(), peak.heightM(), top);
            low[i] = height(x[i], expected.bandS().low(), peak.bandM().low(), top);
            high[i] = height(x[i], end, peak.bandM().high(), top);
        }
        Span band = peak.bandM();
        double highest = heights.stream()
                .mapToDouble(HeightMark::heightM)
                .filter(h -> h < 2 * band.high())
                .max()
                .orElse(0);
        List<Layer> layers = new ArrayList<>();
        layers.add(Layers.expectedBand(x, low, high));
        layers.add(Layers.expected(flown, middle));
        for (HeightMark mark : heights) {
            layers.add(Layers.level(
                    mark.heightM(),
                    mark.name() + " " + format.text(Quantity.HEIGHT, mark.heightM()),
                    mark.limit() ? Token.CAUTION : Token.INK_3,
                    HPos.RIGHT));
        }
        layers.add(frame -> ends(frame, top * expected.durationS(), peak.heightM(), expected.durationS()));
        return new Chart.Content<>(
                Axis.minutes(0, 1.06 * end),
                Axis.of("", "m", 0, 1.14 * Math.max(highest, band.high())),
                layers,
                List.of(),
                List.of());
    }

    /** The top of the climb and the landing with their figures. */
    private void ends(Frame frame, double topS, double peakM, double landingS) {
        Pen pen = frame.pen();
        pen.mark(MarkShape.CIRCLE, Token.ACCENT, MarkStyle.CLEAN, frame.px(topS), frame.py(peakM), 7);
        pen.mark(MarkShape.CIRCLE, Token.ACCENT, MarkStyle.CLEAN, frame.px(landingS), frame.py(0), 7);
        pen.text(
                "peak " + format.text(Quantity.HEIGHT, peakM),
                frame.px(topS),
                frame.py(peakM) + pen.px(14),
                TextRole.SMALL_BOLD,
                Token.INK,
                HPos.CENTER,
                VPos.CENTER);
        pen.text(
                ClockTime.minutesSeconds(landingS),
                frame.px(landingS) + pen.px(6),
                frame.py(0) - pen.px(10),
                TextRole.SMALL_BOLD,
                Token.INK,
                HPos.LEFT,
                VPos.CENTER);
    }

    /** Quick at first on the way up, slower towards the top, steadily down; only its peak and its end are known. */
    private static double height(double atS, double durationS, double peakM, double top) {
        double share = atS / durationS;
        if (share >= 1) {
            return 0;
        }
        return share < top
                ? peakM * Math.sin(Math.PI / 2 * share / top)
                : peakM * (1 - Math.pow((share - top) / (1 - top), 1.4));
    }
}
