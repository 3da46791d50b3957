package org.rafterbook.ui.draw;

import org.rafterbook.ui.look.Token;

/** The signs of balance and neutral point: weight stands on an edge, lift hangs from an eye. */
public final class Symbols {

    private Symbols() {}

    /** The balance point from the side: a solid triangle under the stick, its apex on the point. */
    public static void balanceFromSide(Pen pen, double x, double y) {
        double half = pen.px(8);
        pen.shape(Token.INK, x, y, x + half, y + pen.px(13), x - half, y + pen.px(13));
    }

    /** The balance point from above: two triangles apex to apex across the stick. */
    public static void balanceFromAbove(Pen pen, double x, double y) {
        double half = pen.px(5.5);
        double tall = pen.px(12);
        pen.shape(Token.INK, x, y, x + half, y + tall, x - half, y + tall);
        pen.shape(Token.INK, x, y, x + half, y - tall, x - half, y - tall);
    }

    /** The neutral point from above: an open ring. */
    public static void neutralFromAbove(Pen pen, double x, double y) {
        ring(pen, x, y);
    }

    /** The neutral point from the side: an open ring with a lifting stem and arrowhead. */
    public static void neutralFromSide(Pen pen, double x, double y) {
        double top = y - pen.px(26);
        pen.stroke(Token.INK, 1.8).line(x, y - pen.px(6), x, top + pen.px(6));
        pen.shape(Token.INK, x, top, x + pen.px(4), top + pen.px(8), x - pen.px(4), top + pen.px(8));
        ring(pen, x, y);
    }

    /** The neutral point's band between two accent lines, from one pixel to another. */
    public static void neutralBand(Pen pen, double from, double to, double top, double bottom) {
        pen.area(from, top, to - from, bottom - top, pen.colour(Token.ACCENT, 0.14));
        pen.stroke(Token.ACCENT, 1.2).line(from, top, from, bottom).line(to, top, to, bottom);
    }

    private static void ring(Pen pen, double x, double y) {
        double r = pen.px(5.5);
        var g = pen.canvas();
        g.setFill(pen.colour(Token.SHEET));
        g.fillOval(x - r, y - r, 2 * r, 2 * r);
        pen.stroke(Token.INK, 2);
        g.strokeOval(x - r, y - r, 2 * r, 2 * r);
    }
}
