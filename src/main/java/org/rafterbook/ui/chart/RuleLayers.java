package org.rafterbook.ui.chart;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.look.Token;

/** The usual layers of rules. */
public final class RuleLayers {

    /** A layer that lies under the graduations. */
    interface Ground extends Layer {}

    private static final double SPAN_Y = 11;
    private static final double SPAN_HIGH = 6;

    private RuleLayers() {}

    /** A flight from launch to landing: the version's mark and a bar; open with an upright end if it was cut short. */
    public static Layer flight(double from, double to, VersionMark mark, boolean atLeast) {
        return frame -> {
            Pen pen = frame.pen();
            double y = pen.px(SPAN_Y);
            double h = pen.px(SPAN_HIGH);
            double start = frame.px(from);
            double end = frame.px(to);
            if (atLeast) {
                pen.stroke(mark.token(), 1.2)
                        .outline(start, y - h / 2, end, y - h / 2, end, y + h / 2, start, y + h / 2);
                pen.line(end, y - pen.px(9), end, y + h / 2);
            } else {
                pen.area(start, y - h / 2, end - start, h, mark.token());
            }
            pen.mark(mark, atLeast ? MarkStyle.OPEN : MarkStyle.CLEAN, start, y, 9);
        };
    }

    /** A filled bar from one value to another along the upper edge, such as the turns wound. */
    public static Layer bar(double from, double to, Token token) {
        return frame -> frame.pen()
                .area(
                        frame.px(from),
                        frame.pen().px(8),
                        frame.px(to) - frame.px(from),
                        frame.pen().px(5),
                        token);
    }

    /** The instant or value that is now: an accent line over the whole height with its word. */
    public static Layer now(double value, String word) {
        return at(value, word, Token.ACCENT, 2, TextRole.SMALL_BOLD, SPAN_Y);
    }

    /** The same where triangles hang from the upper edge: the word stands among the labels. */
    public static Layer nowAmongLabels(double value, String word) {
        return at(value, word, Token.ACCENT, 2, TextRole.SMALL_BOLD, Rule.LABEL_Y);
    }

    /** A value that matters: an upright line over the whole height with its word. */
    public static Layer at(double value, String word, Token token) {
        return at(value, word, token, 1.4, TextRole.SMALL, SPAN_Y);
    }

    private static Layer at(double value, String word, Token token, double width, TextRole role, double y) {
        return frame -> {
            if (!frame.x().holds(value)) {
                return;
            }
            Pen pen = frame.pen();
            double x = frame.px(value);
            pen.stroke(token, width).line(x, 0, x, frame.bottom());
            double room = pen.textWidth(word, role) + pen.px(8);
            boolean left = x + room > frame.right();
            pen.text(
                    word,
                    left ? x - pen.px(6) : x + pen.px(6),
                    pen.px(y),
                    role,
                    token,
                    left ? HPos.RIGHT : HPos.LEFT,
                    VPos.CENTER);
        };
    }

    /** Ground beyond a limit: hatched at the foot. */
    public static Layer beyond(double from, double to) {
        return (Ground) frame -> {
            double start = frame.px(frame.x().clamp(from));
            double high = frame.pen().px(12);
            frame.pen().hatch(start, frame.bottom() - high, frame.px(frame.x().clamp(to)) - start, high, Token.STOP);
        };
    }

    /** Ground of caution or of a wished range at the foot. */
    public static Layer ground(double from, double to, Token token) {
        return (Ground) frame -> {
            double start = frame.px(frame.x().clamp(from));
            double high = frame.pen().px(12);
            frame.pen().area(start, frame.bottom() - high, frame.px(frame.x().clamp(to)) - start, high, token);
        };
    }

    /** A small triangle hanging from the upper edge, such as a session on a day; open for one that is planned. */
    public static Layer peg(double value, Token token, boolean planned) {
        return frame -> frame.pen()
                .mark(
                        MarkShape.DOWN_TRIANGLE,
                        token,
                        planned ? MarkStyle.OPEN : MarkStyle.CLEAN,
                        frame.px(value),
                        frame.pen().px(13),
                        9);
    }
}
