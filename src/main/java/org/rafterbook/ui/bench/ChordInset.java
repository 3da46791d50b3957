package org.rafterbook.ui.bench;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.chart.Scale;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.Symbols;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.QuantityFormat;

/** Balance and neutral point along the mean chord, enlarged, where on the drawing they lie too near each other. */
final class ChordInset {

    private static final double WIDE = 264;
    private static final double HIGH = 92;

    private ChordInset() {}

    /** Paints it into the upper right corner; both points are per cent of the mean chord from its leading edge. */
    static void paint(Pen pen, double balance, double neutral, double band) {
        double w = pen.px(WIDE);
        double h = pen.px(HIGH);
        double left = pen.width() - w - pen.px(10);
        double top = pen.px(10);
        if (left < pen.width() * 0.4) {
            return;
        }
        pen.area(left, top, w, h, Token.SHEET);
        pen.stroke(Token.LINE, 1).outline(left, top, left + w, top, left + w, top + h, left, top + h);
        pen.text(
                "Along the mean chord, %",
                left + pen.px(14), top + pen.px(13), TextRole.SMALL_BOLD, Token.INK, HPos.LEFT, VPos.CENTER);
        Scale x = new Scale(0, 100, left + pen.px(14), left + w - pen.px(14));
        double line = top + pen.px(52);
        pen.stroke(Token.EDGE, 1).line(x.lowPx(), line, x.highPx(), line);
        for (int percent = 0; percent <= 100; percent += 10) {
            double at = x.at(percent);
            pen.line(at, line, at, line + pen.px(percent % 50 == 0 ? 8 : 5));
            if (percent % 50 == 0) {
                pen.text(
                        String.valueOf(percent),
                        at,
                        line + pen.px(16),
                        TextRole.MICRO,
                        Token.INK_2,
                        HPos.CENTER,
                        VPos.CENTER);
            }
        }
        double n = x.at(x.clamp(neutral));
        double eye = line - pen.px(11);
        if (band > 0) {
            Symbols.neutralBand(
                    pen, x.at(x.clamp(neutral - band)), x.at(x.clamp(neutral + band)), eye - pen.px(10), line);
        }
        Symbols.neutralFromAbove(pen, n, eye);
        Symbols.balanceFromSide(pen, x.at(x.clamp(balance)), line + 1);
        pen.text(
                text(neutral),
                Math.max(n, x.at(x.clamp(neutral + band))) + pen.px(11),
                eye,
                TextRole.SMALL_BOLD,
                Token.INK,
                HPos.LEFT,
                VPos.CENTER);
        pen.text(
                text(balance),
                x.at(x.clamp(balance)),
                line + pen.px(28),
                TextRole.SMALL_BOLD,
                Token.INK,
                HPos.CENTER,
                VPos.CENTER);
    }

    private static String text(double percent) {
        return QuantityFormat.rounded(percent, 1);
    }
}
