package org.rafterbook.ui.chart;

import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;

/** The usual layers of charts. Values are in the axes' units; x values ascend. */
public final class Layers {

    private static final double BAND = 0.16;
    private static final double EXPECTED = 0.14;
    private static final double HATCH = 0.25;

    private Layers() {}

    /** The band of an estimate: ink let through, drawn no further than was flown. */
    public static Layer band(double[] x, double[] low, double[] high) {
        return frame -> within(frame, pen -> fill(frame, x, low, high, Token.INK_2, BAND));
    }

    /** What is expected: a band in the accent; it may reach where nothing was flown yet. */
    public static Layer expectedBand(double[] x, double[] low, double[] high) {
        return frame -> fill(frame, x, low, high, Token.ACCENT, EXPECTED);
    }

    /** The curve of an estimate, drawn no further than was flown. */
    public static Layer curve(double[] x, double[] y) {
        return frame -> within(frame, pen -> stroke(frame, x, y, Token.INK, 1.8));
    }

    /** What is expected: a dashed line in the accent. */
    public static Layer expected(double[] x, double[] y) {
        return frame -> {
            frame.pen().stroke(Token.ACCENT, 1.8).dashed(5, 3);
            path(frame, x, y);
        };
    }

    /** A measured trace with its points marked, in a chart colour. */
    public static Layer trace(double[] x, double[] y, Token token, boolean points) {
        return frame -> {
            stroke(frame, x, y, token, 2);
            for (int i = 0; points && i < x.length; i++) {
                frame.pen().mark(MarkShape.CIRCLE, token, MarkStyle.CLEAN, frame.px(x[i]), frame.py(y[i]), 8);
            }
        };
    }

    /** A range of x in the accent's soft ground between two accent lines, with its words at the foot. */
    public static Layer range(double low, double high, String... words) {
        return frame -> {
            double from = frame.px(frame.x().clamp(low));
            double to = frame.px(frame.x().clamp(high));
            frame.pen().area(from, frame.top(), to - from, frame.height(), Token.SOFT);
            frame.pen().stroke(Token.ACCENT, 1.2);
            frame.pen().line(from, frame.top(), from, frame.bottom()).line(to, frame.top(), to, frame.bottom());
            double line = frame.pen().px(13);
            double y = frame.bottom() - frame.pen().px(6) - line * (words.length - 1);
            for (String word : words) {
                frame.pen().text(word, (from + to) / 2, y, TextRole.SMALL_BOLD, Token.ACCENT, HPos.CENTER, VPos.BOTTOM);
                y += line;
            }
        };
    }

    /** A limit on x: a stop line with its words, line by line; beyond it stop ground and hatching. */
    public static Layer limit(double value, String... words) {
        return frame -> {
            if (!frame.x().holds(value)) {
                return;
            }
            double x = frame.px(value);
            Pen pen = frame.pen();
            pen.area(x, frame.top(), frame.right() - x, frame.height(), Token.STOP_SOFT);
            pen.hatch(x, frame.top(), frame.right() - x, frame.height(), pen.colour(Token.STOP, HATCH));
            pen.stroke(Token.STOP, 1.6).line(x, frame.top(), x, frame.bottom());
            double y = frame.top() + pen.px(6);
            for (String word : words) {
                pen.text(word, x + pen.px(6), y, TextRole.SMALL, Token.STOP, HPos.LEFT, VPos.TOP);
                y += pen.px(13);
            }
        };
    }

    /** A level on y, dashed, with its words at the left or, for lamps and beams, at the right end. */
    public static Layer level(double value, String words, Token token, HPos where) {
        return frame -> {
            if (!frame.y().holds(value)) {
                return;
            }
            double y = frame.py(value);
            Pen pen = frame.pen();
            pen.stroke(token, 1.4).dashed(5, 3).line(frame.left(), y, frame.right(), y);
            double x = where == HPos.LEFT ? frame.left() + pen.px(6) : frame.right() - pen.px(6);
            pen.text(words, x, y - pen.px(4), TextRole.SMALL, token, where, VPos.BOTTOM);
        };
    }

    /** A firm line at zero of y. */
    public static Layer zero() {
        return frame ->
                frame.pen().stroke(Token.INK_2, 1.6).line(frame.left(), frame.py(0), frame.right(), frame.py(0));
    }

    /** A trim change: an upright hairline with the change at its head; a return is dotted and quiet. */
    public static Layer change(double value, String words, boolean isReturn) {
        return frame -> {
            if (!frame.x().holds(value)) {
                return;
            }
            Pen pen = frame.pen();
            double x = frame.px(value);
            pen.stroke(isReturn ? Token.LINE : Token.EDGE, 1.2);
            if (isReturn) {
                pen.dashed(2, 3);
            }
            pen.line(x, pen.px(6), x, frame.bottom());
            pen.text(
                    words,
                    x + pen.px(3),
                    pen.px(12),
                    TextRole.SMALL,
                    isReturn ? Token.INK_3 : Token.INK,
                    HPos.LEFT,
                    VPos.CENTER);
        };
    }

    /** Words at a place of the chart. */
    public static Layer words(double x, double y, String words, TextRole role, Token token, HPos across) {
        return frame ->
                frame.pen().textOn(Token.SHEET, words, frame.px(x), frame.py(y), role, token, across, VPos.CENTER);
    }

    private static void within(Frame frame, Consumer<Pen> painter) {
        var g = frame.pen().canvas();
        double from = Math.max(frame.left(), frame.px(frame.flownLow()));
        double to = Math.min(frame.right(), frame.px(frame.flownHigh()));
        if (to <= from) {
            return;
        }
        g.save();
        g.beginPath();
        g.rect(from, frame.top(), to - from, frame.height());
        g.clip();
        painter.accept(frame.pen());
        g.restore();
    }

    private static void fill(Frame frame, double[] x, double[] low, double[] high, Token token, double opacity) {
        int n = x.length;
        double[] xs = new double[2 * n];
        double[] ys = new double[2 * n];
        for (int i = 0; i < n; i++) {
            xs[i] = frame.px(x[i]);
            ys[i] = frame.py(low[i]);
            xs[2 * n - 1 - i] = xs[i];
            ys[2 * n - 1 - i] = frame.py(high[i]);
        }
        frame.pen().canvas().setFill(frame.pen().colour(token, opacity));
        frame.pen().canvas().fillPolygon(xs, ys, 2 * n);
    }

    private static void stroke(Frame frame, double[] x, double[] y, Token token, double width) {
        frame.pen().stroke(token, width);
        path(frame, x, y);
    }

    private static void path(Frame frame, double[] x, double[] y) {
        double[] xs = new double[x.length];
        double[] ys = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            xs[i] = frame.px(x[i]);
            ys[i] = frame.py(y[i]);
        }
        frame.pen().path(xs, ys, x.length);
    }
}
