package org.rafterbook.ui.draw;

import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import org.rafterbook.ui.look.Token;

/** Shows a line icon; it never stands without a word beside it. */
public final class IconView extends Drawing {

    private static final double UNITS = 24;
    private final Icon icon;
    private Token ink = Token.INK_2;

    public IconView(Icon icon, double sizeEm) {
        this.icon = icon;
        wish(sizeEm, sizeEm);
        setMouseTransparent(true);
    }

    /** Draws the icon in another ink from now on. */
    public void ink(Token token) {
        ink = token;
        repaint();
    }

    @Override
    protected void paint(Pen pen) {
        var g = pen.canvas();
        double scale = Math.min(pen.width(), pen.height()) / UNITS;
        g.save();
        g.scale(scale, scale);
        g.setStroke(pen.colour(ink));
        g.setLineWidth(1.75 * pen.px(1) / scale);
        g.setLineCap(StrokeLineCap.ROUND);
        g.setLineJoin(StrokeLineJoin.ROUND);
        g.beginPath();
        g.appendSVGPath(icon.path());
        g.stroke();
        if (icon == Icon.THEME) {
            g.setFill(pen.colour(ink));
            g.beginPath();
            g.appendSVGPath("M12 3.5 A8.5 8.5 0 0 1 12 20.5 Z");
            g.fill();
        }
        g.restore();
    }
}
