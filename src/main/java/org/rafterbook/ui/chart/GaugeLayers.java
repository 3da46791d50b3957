package org.rafterbook.ui.chart;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;

/** The usual layers of gauges; they stand on the line. */
public final class GaugeLayers {

    private GaugeLayers() {}

    /** What has passed so far, with the value now as an upright accent line. */
    public static Layer filled(double from, double now) {
        return frame -> {
            Pen pen = frame.pen();
            double x = frame.px(frame.x().clamp(now));
            pen.area(
                    frame.px(from),
                    frame.bottom() - pen.px(10),
                    x - frame.px(from),
                    pen.px(10),
                    pen.colour(Token.EDGE, 0.6));
            pen.stroke(Token.ACCENT, 2.4).line(x, frame.bottom() - pen.px(33), x, frame.bottom() + pen.px(11));
        };
    }

    /** A range that is wished or expected: soft between two accent lines, its words above. */
    public static Layer range(double low, double high, String words) {
        return frame -> {
            Pen pen = frame.pen();
            double from = frame.px(frame.x().clamp(low));
            double to = frame.px(frame.x().clamp(high));
            double top = frame.bottom() - pen.px(20);
            pen.area(from, frame.bottom() - pen.px(16), to - from, pen.px(16), Token.SOFT);
            pen.stroke(Token.ACCENT, 1.2).line(from, top, from, frame.bottom()).line(to, top, to, frame.bottom());
            pen.text(words, (from + to) / 2, top - pen.px(3), TextRole.SMALL, Token.ACCENT, HPos.CENTER, VPos.BOTTOM);
        };
    }

    /** Out of bounds: hatched. */
    public static Layer beyond(double low, double high) {
        return frame -> {
            double from = frame.px(frame.x().clamp(low));
            double tall = frame.pen().px(6);
            frame.pen().hatch(from, frame.bottom() - tall, frame.px(frame.x().clamp(high)) - from, tall, Token.STOP);
        };
    }

    /** The value itself as a blade whose edge touches the line. */
    public static Layer blade(double value) {
        return frame -> {
            Pen pen = frame.pen();
            double x = frame.px(frame.x().clamp(value));
            double half = pen.px(6);
            double top = frame.bottom() - pen.px(26);
            double shoulder = frame.bottom() - pen.px(12);
            pen.shape(
                    Token.INK, x - half, top, x + half, top, x + half, shoulder, x, frame.bottom(), x - half, shoulder);
        };
    }

    /** The value before the change: an open triangle. */
    public static Layer before(double value) {
        return frame -> frame.pen()
                .mark(
                        MarkShape.DOWN_TRIANGLE,
                        Token.INK_2,
                        MarkStyle.OPEN,
                        frame.px(frame.x().clamp(value)),
                        frame.bottom() - frame.pen().px(7),
                        10);
    }

    /** How well the value is known: a bar with end caps over the blade. */
    public static Layer plusMinus(double value, double uncertainty) {
        return frame -> {
            Pen pen = frame.pen();
            double from = frame.px(frame.x().clamp(value - uncertainty));
            double to = frame.px(frame.x().clamp(value + uncertainty));
            double y = frame.bottom() - pen.px(28);
            double cap = pen.px(3);
            pen.stroke(Token.INK, 1.4)
                    .line(from, y, to, y)
                    .line(from, y - cap, from, y + cap)
                    .line(to, y - cap, to, y + cap);
        };
    }

    /** A value that matters, as an upright line with its word above. */
    public static Layer at(double value, String word, Token token) {
        return frame -> {
            if (frame.x().holds(value)) {
                Pen pen = frame.pen();
                double x = frame.px(value);
                pen.stroke(token, 1.6).line(x, frame.bottom() - pen.px(20), x, frame.bottom());
                pen.text(word, x, frame.bottom() - pen.px(23), TextRole.SMALL, token, HPos.CENTER, VPos.BOTTOM);
            }
        };
    }

    /** A value of the diary, such as the best today: dotted below the line with its words. */
    public static Layer below(double value, String words) {
        return frame -> {
            if (frame.x().holds(value)) {
                Pen pen = frame.pen();
                double x = frame.px(value);
                pen.stroke(Token.INK_2, 1.2)
                        .dashed(2, 2)
                        .line(x, frame.bottom() + pen.px(2), x, frame.bottom() + pen.px(30));
                // the unit stands at the right end
                double half = pen.textWidth(words, TextRole.SMALL) / 2;
                double at = Math.max(half, Math.min(x, frame.right() - pen.px(56) - half));
                pen.text(words, at, frame.bottom() + pen.px(36), TextRole.SMALL, Token.INK, HPos.CENTER, VPos.CENTER);
            }
        };
    }

    /** Something that happened at a value: a small triangle on the line with its word. */
    public static Layer event(double value, String word) {
        return frame -> {
            Pen pen = frame.pen();
            double x = frame.px(frame.x().clamp(value));
            pen.mark(MarkShape.DOWN_TRIANGLE, Token.INK_2, MarkStyle.CLEAN, x, frame.bottom() - pen.px(6), 9);
            pen.text(word, x, frame.bottom() - pen.px(14), TextRole.SMALL, Token.INK, HPos.CENTER, VPos.BOTTOM);
        };
    }
}
