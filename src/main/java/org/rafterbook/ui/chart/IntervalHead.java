package org.rafterbook.ui.chart;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.QuantityFormat;

/** The scale in the head of a column of {@link IntervalBar}s: labels at every second grid line and at zero. */
public final class IntervalHead extends Drawing {

    private static final double ROOM = 32;

    private final IntervalBar.Range range;

    public IntervalHead(IntervalBar.Range range) {
        this.range = range;
        wish(-1, 2.2);
        setMinWidth(0);
        setAccessibleText("Effect in per cent");
    }

    @Override
    protected void paint(Pen pen) {
        Scale x = range.scale(pen.width(), pen.px(IntervalBar.SIDE));
        IntervalBar.grid(pen, range, x, pen.height() - pen.px(6), pen.height());
        double step = 2 * range.step();
        if (step * x.pxPerUnit() < pen.px(ROOM)) {
            step *= 2;
        }
        double last = Math.floor(range.high() / step) * step;
        for (double value = Math.ceil(range.low() / step) * step; value <= last + step / 2; value += step) {
            String sign = value > step / 2 ? "+" : "";
            String text = sign + QuantityFormat.rounded(value, 0) + (value > last - step / 2 ? " %" : "");
            pen.text(
                    text, x.at(value), pen.height() - pen.px(9), TextRole.MICRO, Token.INK_3, HPos.CENTER, VPos.BOTTOM);
        }
    }
}
