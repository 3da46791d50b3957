package org.rafterbook.ui.chart;

import javafx.scene.AccessibleRole;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.look.Token;

/**
 * An effect with its interval in a row of a table: a bar with end caps, the estimate a diamond, filled with three or
 * more flights on each side and open with fewer; an arrowhead where the bar leaves the plot. The grid and the firm zero
 * line run on from row to row; {@link IntervalHead} draws their labels.
 */
public final class IntervalBar extends Drawing {

    /**
     * An estimated effect, in per cent.
     *
     * @param fewFlights whether one side has fewer than three flights
     */
    public record Interval(double low, double estimate, double high, boolean fewFlights) {}

    /** The range all rows of a table share, in per cent, with a grid line every {@code step}. */
    public record Range(double low, double high, double step) {

        Scale scale(double width, double side) {
            return new Scale(low, high, side, Math.max(side + 1, width - side));
        }
    }

    static final double SIDE = 18;

    private final Range range;
    private final @Nullable Interval interval;

    /**
     * @param interval null for a row without an answer: only the grid runs on
     */
    public IntervalBar(Range range, @Nullable Interval interval) {
        this.range = range;
        this.interval = interval;
        wish(-1, -1);
        setMinSize(0, 0);
        setAccessibleRole(AccessibleRole.TEXT);
        if (interval != null) {
            setAccessibleText(Math.round(interval.estimate()) + " %, from " + Math.round(interval.low()) + " to "
                    + Math.round(interval.high()) + " %");
        }
    }

    @Override
    protected void paint(Pen pen) {
        Scale x = range.scale(pen.width(), pen.px(SIDE));
        grid(pen, range, x, 0, pen.height());
        if (interval == null) {
            return;
        }
        double y = Math.round(pen.height() / 2);
        double from = x.at(x.clamp(interval.low()));
        double to = x.at(x.clamp(interval.high()));
        pen.stroke(Token.INK, 2).line(from, y, to, y);
        end(pen, x.holds(interval.low()), from, y, -1);
        end(pen, x.holds(interval.high()), to, y, 1);
        if (x.holds(interval.estimate())) {
            pen.mark(
                    MarkShape.DIAMOND,
                    Token.INK,
                    interval.fewFlights() ? MarkStyle.OPEN : MarkStyle.CLEAN,
                    x.at(interval.estimate()),
                    y,
                    9);
        }
    }

    private static void end(Pen pen, boolean inside, double x, double y, int direction) {
        double half = pen.px(5);
        if (inside) {
            pen.stroke(Token.INK, 2).line(x, y - half, x, y + half);
        } else {
            pen.shape(
                    Token.INK,
                    x + direction * pen.px(5),
                    y,
                    x - direction * pen.px(2),
                    y - half,
                    x - direction * pen.px(2),
                    y + half);
        }
    }

    static void grid(Pen pen, Range range, Scale x, double top, double bottom) {
        for (double value = Math.ceil(range.low() / range.step()) * range.step();
                value <= range.high();
                value += range.step()) {
            boolean zero = Math.abs(value) < range.step() / 2;
            pen.stroke(zero ? Token.INK_2 : Token.GRID_5, zero ? 1.6 : 1).line(x.at(value), top, x.at(value), bottom);
        }
    }
}
