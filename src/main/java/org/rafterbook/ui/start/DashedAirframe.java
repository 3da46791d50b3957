package org.rafterbook.ui.start;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;

/** A model from above as it is before anything of it was measured: dashed, with what to measure beside it. */
final class DashedAirframe extends Drawing {

    private static final double HEIGHT_EM = 24;

    /** The picture's own size in pixels of the design. */
    private static final double WIDE = 485;

    private static final double HIGH = 300;

    DashedAirframe() {
        wish(-1, HEIGHT_EM);
        setMinSize(0, 0);
        setAccessibleText("A model from above with question marks at span, chord and balance");
    }

    @Override
    protected void paint(Pen pen) {
        paper(pen);
        double scale = Math.min(pen.width() / WIDE, pen.height() / HIGH);
        double left = (pen.width() - WIDE * scale) / 2;
        double mid = pen.height() / 2;
        Plan plan = new Plan(pen, left, mid, scale);
        plan.stick();
        plan.surface(192, 90, 221);
        plan.surface(416, 56, 122);
        plan.balance(249);
        plan.span(38, 221);
        plan.chord(192, 90, 126);
    }

    private static void paper(Pen pen) {
        double step = pen.px(10);
        int line = 0;
        for (double x = 0; x < pen.width(); x += step) {
            pen.stroke(line++ % 5 == 2 ? Token.GRID_5 : Token.GRID, 1).line(x, 0, x, pen.height());
        }
        line = 0;
        for (double y = 0; y < pen.height(); y += step) {
            pen.stroke(line++ % 5 == 2 ? Token.GRID_5 : Token.GRID, 1).line(0, y, pen.width(), y);
        }
    }

    /** The plan with its own scale: x from the left of the picture, the stick at y 0. */
    private record Plan(Pen pen, double left, double mid, double scale) {

        private double x(double design) {
            return left + design * scale;
        }

        private double length(double design) {
            return design * scale;
        }

        private void dashed() {
            pen.stroke(Token.INK_2, 1).dashed(4, 3);
        }

        void surface(double edge, double chord, double span) {
            dashed();
            double round = length(chord * 0.95);
            pen.canvas().strokeRoundRect(x(edge), mid - length(span / 2), length(chord), length(span), round, round);
        }

        void stick() {
            dashed();
            pen.line(x(70), mid - length(2), x(334), mid - length(2));
            pen.line(x(70), mid + length(2), x(334), mid + length(2));
            pen.line(x(70), mid - length(2), x(70), mid + length(2));
            pen.line(x(334), mid, x(472), mid);
        }

        void balance(double at) {
            double half = length(6);
            double tall = length(13);
            pen.shape(Token.ACCENT, x(at), mid, x(at) + half, mid + tall, x(at) - half, mid + tall);
            pen.shape(Token.ACCENT, x(at), mid, x(at) + half, mid - tall, x(at) - half, mid - tall);
            pen.textOn(
                    Token.SHEET,
                    "balance ?",
                    x(at),
                    mid + tall + pen.px(13),
                    TextRole.SMALL_BOLD,
                    Token.ACCENT,
                    HPos.CENTER,
                    VPos.CENTER);
        }

        void span(double at, double span) {
            double top = mid - length(span / 2);
            double foot = mid + length(span / 2);
            pen.stroke(Token.INK_2, 1).line(x(at), top, x(at), foot);
            arrow(x(at), top, 0, 1);
            arrow(x(at), foot, 0, -1);
            word("span ?", x(at), mid);
        }

        void chord(double edge, double chord, double below) {
            double y = mid + length(below);
            double end = x(edge + chord);
            pen.stroke(Token.INK_2, 1).line(x(edge), y, end, y);
            pen.line(x(edge), y - pen.px(5), x(edge), y + pen.px(5));
            pen.line(end, y - pen.px(5), end, y + pen.px(5));
            arrow(x(edge), y, 1, 0);
            arrow(end, y, -1, 0);
            word("chord ?", (x(edge) + end) / 2, y);
        }

        private void arrow(double x, double y, int dx, int dy) {
            double tall = pen.px(6);
            double half = pen.px(2.5);
            pen.shape(
                    Token.INK_2,
                    x,
                    y,
                    x + dx * tall - dy * half,
                    y + dy * tall - dx * half,
                    x + dx * tall + dy * half,
                    y + dy * tall + dx * half);
        }

        private void word(String text, double x, double y) {
            pen.textOn(Token.SHEET, text, x, y, TextRole.SMALL, Token.INK_2, HPos.CENTER, VPos.CENTER);
        }
    }
}
