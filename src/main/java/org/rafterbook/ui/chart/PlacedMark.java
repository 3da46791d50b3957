package org.rafterbook.ui.chart;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;

/**
 * A flight's mark where it lies on the canvas.
 *
 * @param scale how much smaller than usual it is drawn where marks lie close together, 1 for not
 */
record PlacedMark<K>(FlightMark<K> mark, double x, double y, double scale) {

    /** Share of the full colour for flights that stand behind. */
    private static final double BEHIND = 0.22;

    double distance(double toX, double toY) {
        return Math.hypot(toX - x, toY - y);
    }

    void paint(Pen pen) {
        pen.canvas().setGlobalAlpha(mark.behind() ? BEHIND : 1);
        if (mark.leftOut()) {
            double arm = pen.px(scale * mark.size() * 0.4);
            pen.stroke(Token.INK_3, 1.4).line(x - arm, y - arm, x + arm, y + arm);
            pen.line(x - arm, y + arm, x + arm, y - arm);
        } else {
            pen.mark(mark.mark(), mark.style(), x, y, scale * mark.size());
        }
        pen.canvas().setGlobalAlpha(1);
    }

    /** Points the mark out: a ring round it and its words beside it. */
    void point(Pen pen) {
        double r = pen.px(8);
        pen.stroke(Token.ACCENT, 2);
        pen.canvas().strokeOval(x - r, y - r, 2 * r, 2 * r);
        paint(pen);
        double w = pen.textWidth(mark.says(), TextRole.SMALL) + pen.px(12);
        double h = pen.px(20);
        double left = x + r + pen.px(4) + w > pen.width() ? x - r - pen.px(4) - w : x + r + pen.px(4);
        left = Math.max(1, left);
        double top = Math.max(1, Math.min(pen.height() - h - 1, y - h / 2));
        pen.area(left, top, w, h, Token.EDGE).area(left + 1, top + 1, w - 2, h - 2, Token.RAISED);
        pen.text(mark.says(), left + pen.px(6), top + h / 2, TextRole.SMALL, Token.INK, HPos.LEFT, VPos.CENTER);
    }

    /** What is painted, for tests. */
    String describe() {
        return (mark.style() == MarkStyle.AT_LEAST ? "open " : "filled ") + shape().word();
    }

    private MarkShape shape() {
        return mark.mark().shape();
    }
}
