package org.rafterbook.ui.draw;

import org.rafterbook.ui.look.Token;

/** The app's own sign: a truss whose lower edge is the measuring edge. */
public final class AppSign extends Drawing {

    public AppSign() {
        wish(2.24, 1.92);
        setMouseTransparent(true);
    }

    @Override
    protected void paint(Pen pen) {
        double w = pen.width();
        double foot = pen.height() - pen.px(3);
        double mid = w / 2;
        double top = pen.px(2);
        double side = pen.px(3);
        pen.stroke(Token.INK, 1.6)
                .line(side, foot, mid, top)
                .line(w - side, foot, mid, top)
                .line(mid, top, mid, foot)
                .line(mid, top, w * 0.36, foot)
                .line(mid, top, w * 0.64, foot)
                .line(w * 0.24, (foot + top) / 2 + pen.px(3), mid, foot)
                .line(w * 0.76, (foot + top) / 2 + pen.px(3), mid, foot);
        pen.stroke(Token.ACCENT, 2.4).line(0, foot, w, foot);
    }
}
