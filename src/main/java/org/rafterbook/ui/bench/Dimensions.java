package org.rafterbook.ui.bench;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;

/** Dimension lines with arrowheads. */
final class Dimensions {

    private Dimensions() {}

    /** A line whose second end is an arrowhead. */
    static void arrow(Pen pen, double x1, double y1, double x2, double y2) {
        pen.stroke(Token.INK_2, 1).dashed();
        pen.line(x1, y1, x2, y2);
        double length = Math.hypot(x2 - x1, y2 - y1);
        if (length < 1) {
            return;
        }
        double ux = (x2 - x1) / length;
        double uy = (y2 - y1) / length;
        double head = pen.px(7);
        double half = pen.px(2.6);
        pen.shape(
                Token.INK_2,
                x2,
                y2,
                x2 - head * ux - half * uy,
                y2 - head * uy + half * ux,
                x2 - head * ux + half * uy,
                y2 - head * uy - half * ux);
    }

    /** A level dimension between two places: inside where there is room, else with its arrows from outside. */
    static void level(Pen pen, double from, double to, double y, String text, Token ink, TextRole role) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        double room = pen.textWidth(text, role) + pen.px(24);
        if (high - low > room) {
            double middle = (low + high) / 2;
            arrow(pen, middle, y, low, y);
            arrow(pen, middle, y, high, y);
            pen.textOn(Token.SHEET, text, middle, y, role, ink, HPos.CENTER, VPos.CENTER);
        } else {
            arrow(pen, low - pen.px(22), y, low, y);
            arrow(pen, high + pen.px(22), y, high, y);
            pen.textOn(Token.SHEET, text, high + pen.px(30), y, role, ink, HPos.LEFT, VPos.CENTER);
        }
    }

    /** An upright dimension between two heights with its text beside it. */
    static void upright(Pen pen, double x, double from, double to, String text) {
        double middle = (from + to) / 2;
        arrow(pen, x, middle, x, from);
        arrow(pen, x, middle, x, to);
        pen.textOn(Token.SHEET, text, x - pen.px(4), middle, TextRole.SMALL, Token.INK, HPos.RIGHT, VPos.CENTER);
    }
}
