package org.rafterbook.ui.review;

import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.look.Token;

/** The sign of a flight that was cut short. */
final class AtLeastSign extends Drawing {

    AtLeastSign() {
        wish(1, 1.8);
    }

    @Override
    protected void paint(Pen pen) {
        pen.mark(MarkShape.CIRCLE, Token.INK_2, MarkStyle.AT_LEAST, pen.width() / 2, pen.height() / 2 + pen.px(4), 8.5);
    }
}
