package org.rafterbook.ui.chart;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Token;

/** Graph paper with its two axes: the ground of every chart. */
final class Paper {

    private static final double TICK = 5;

    /** Labels above each other need less room than labels beside each other. */
    private static final double CLOSER = 1.8;

    private final Pen pen;
    private final Axis xAxis;
    private final Axis yAxis;
    private final boolean strip;
    private final Frame frame;
    private final List<Tick> xTicks;
    private final List<Tick> yTicks;

    Paper(Pen pen, Axis xAxis, Axis yAxis, boolean strip, double flownLow, double flownHigh) {
        this.pen = pen;
        this.xAxis = xAxis;
        this.yAxis = yAxis;
        this.strip = strip;
        double left = pen.px(strip ? 55 : 40);
        double right = pen.width() - pen.px(strip ? 20 : 14);
        double top = pen.px(strip ? 24 : yAxis.name().isEmpty() ? 8 : 24);
        double bottom = pen.height() - pen.px(xAxis.title().isEmpty() ? 24 : 38);
        Scale x = new Scale(xAxis.low(), xAxis.high(), left, Math.max(left + 1, right));
        Scale y = new Scale(yAxis.low(), yAxis.high(), Math.max(top + 1, bottom), top);
        frame = new Frame(pen, x, y, left, top, right, Math.max(top + 1, bottom), flownLow, flownHigh);
        xTicks = ticks(xAxis, x, 1);
        yTicks = ticks(yAxis, y, CLOSER);
    }

    private List<Tick> ticks(Axis axis, Scale scale, double closer) {
        return axis.graduation().ticks(axis.low(), axis.high(), scale.pxPerUnit() * TextSize.EM_PX / pen.em() * closer);
    }

    Frame frame() {
        return frame;
    }

    /** Grid, and raised ground where nothing was flown. */
    void ground() {
        if (strip) {
            pen.area(0, 0, pen.width(), pen.height(), Token.RAISED);
        }
        grid(Tick.Level.ONE, Token.GRID);
        grid(Tick.Level.FIVE, Token.GRID);
        grid(Tick.Level.TEN, Token.GRID_5);
        unflown(frame.x().low(), frame.flownLow(), frame.flownLow());
        unflown(frame.flownHigh(), frame.x().high(), frame.flownHigh());
    }

    private void grid(Tick.Level level, Token token) {
        pen.stroke(token, 1);
        for (Tick tick : xTicks) {
            if (tick.level() == level && !strip && level != Tick.Level.ONE) {
                pen.line(frame.px(tick.value()), frame.top(), frame.px(tick.value()), frame.bottom());
            }
        }
        for (Tick tick : yTicks) {
            if (tick.level() == level && level != Tick.Level.ONE) {
                pen.line(frame.left(), frame.py(tick.value()), frame.right(), frame.py(tick.value()));
            }
        }
    }

    private void unflown(double low, double high, double edge) {
        double from = frame.px(frame.x().clamp(low));
        double to = frame.px(frame.x().clamp(high));
        if (to - from < 1) {
            return;
        }
        pen.area(from, frame.top(), to - from, frame.height(), Token.RAISED);
        pen.stroke(Token.EDGE, 1).dashed(3, 3).line(frame.px(edge), frame.top(), frame.px(edge), frame.bottom());
        if (to - from > pen.px(44)) {
            double y = frame.top() + frame.height() * 0.6;
            pen.text("never", (from + to) / 2, y, TextRole.SMALL, Token.INK_3, HPos.CENTER, VPos.BOTTOM);
            pen.text("flown", (from + to) / 2, y, TextRole.SMALL, Token.INK_3, HPos.CENTER, VPos.TOP);
        }
    }

    /** The two axes with ticks pointing out, and their names and units at their ends. */
    void axes() {
        pen.stroke(Token.EDGE, 1.4)
                .line(frame.left(), frame.top(), frame.left(), frame.bottom())
                .line(frame.left(), frame.bottom(), frame.right(), frame.bottom());
        pen.stroke(Token.EDGE, 1);
        for (Tick tick : xTicks) {
            double x = frame.px(tick.value());
            double length = pen.px(tick.level() == Tick.Level.TEN ? TICK : TICK * 0.6);
            if (tick.level() != Tick.Level.ONE || strip) {
                pen.line(x, frame.bottom(), x, frame.bottom() + length);
            }
            pen.text(tick.label(), x, frame.bottom() + pen.px(8), TextRole.MICRO, Token.INK_2, HPos.CENTER, VPos.TOP);
        }
        pen.stroke(Token.EDGE, 1);
        for (Tick tick : yTicks) {
            double y = frame.py(tick.value());
            if (tick.level() == Tick.Level.TEN) {
                pen.line(frame.left() - pen.px(TICK), y, frame.left(), y);
            }
            pen.text(tick.label(), frame.left() - pen.px(9), y, TextRole.MICRO, Token.INK_2, HPos.RIGHT, VPos.CENTER);
        }
        names();
    }

    private void names() {
        pen.text(
                xAxis.title(),
                frame.right(),
                frame.bottom() + pen.px(22),
                TextRole.SMALL,
                Token.INK_2,
                HPos.RIGHT,
                VPos.TOP);
        if (yAxis.name().isEmpty()) {
            pen.text(
                    yAxis.unit(),
                    frame.left() - pen.px(9),
                    unitAt(),
                    TextRole.SMALL,
                    Token.INK_2,
                    HPos.RIGHT,
                    VPos.CENTER);
        } else {
            pen.text(yAxis.title(), pen.px(4), pen.px(4), TextRole.SMALL, Token.INK_2, HPos.LEFT, VPos.TOP);
        }
    }

    /** Half-way between the two uppermost labels, so that the unit covers none. */
    private double unitAt() {
        double highest = Double.NaN;
        double second = Double.NaN;
        for (Tick tick : yTicks) {
            if (!tick.label().isEmpty()) {
                second = highest;
                highest = tick.value();
            }
        }
        return Double.isNaN(second) ? frame.top() : frame.py((highest + second) / 2);
    }
}
