package org.rafterbook.ui.draw;

import org.rafterbook.ui.look.Token;

/** Paints marks; the only place that knows how they look. */
final class Marks {

    private static final double TICK = 7;
    private static final double LINE = 1.6;

    private Marks() {}

    static void paint(Pen pen, MarkShape shape, Token token, MarkStyle style, double x, double y, double sizePx) {
        double half = sizePx / 2;
        if (style == MarkStyle.CLEAN) {
            fill(pen, shape, token, x, y, half);
            return;
        }
        double line = pen.px(LINE);
        // the outline lies inside the size of the filled mark
        double inner = half - line * 0.3;
        if (style != MarkStyle.HALF) {
            fill(pen, shape, Token.SHEET, x, y, inner);
        }
        if (style == MarkStyle.HALF) {
            baseHalf(pen, shape, token, x, y, half);
        }
        pen.stroke(token, LINE);
        if (shape == MarkShape.CIRCLE) {
            pen.canvas().strokeOval(x - inner, y - inner, 2 * inner, 2 * inner);
        } else {
            pen.outline(shape.corners(x, y, inner));
        }
        if (style == MarkStyle.AT_LEAST) {
            double top = y + top(shape) * inner;
            pen.stroke(token, LINE).line(x, top, x, top - pen.px(TICK));
        }
    }

    private static void fill(Pen pen, MarkShape shape, Token token, double x, double y, double half) {
        if (shape == MarkShape.CIRCLE) {
            pen.canvas().setFill(pen.colour(token));
            pen.canvas().fillOval(x - half, y - half, 2 * half, 2 * half);
        } else {
            pen.shape(token, shape.corners(x, y, half));
        }
    }

    /** The half at the base: below for the triangle that points up, above for the one that points down. */
    private static void baseHalf(Pen pen, MarkShape shape, Token token, double x, double y, double half) {
        pen.canvas().save();
        pen.canvas().beginPath();
        double top = shape == MarkShape.DOWN_TRIANGLE ? y - half * 2.1 : y + half * 0.1;
        pen.canvas().rect(x - 2 * half, top, 4 * half, 2 * half);
        pen.canvas().clip();
        fill(pen, shape, token, x, y, half);
        pen.canvas().restore();
    }

    private static double top(MarkShape shape) {
        return switch (shape) {
            case CIRCLE, UP_TRIANGLE, PLUS -> -1;
            case SQUARE -> -0.89;
            case DOWN_TRIANGLE -> -0.88;
            case DIAMOND -> -1.12;
        };
    }
}
