package org.rafterbook.ui.kit;

import javafx.scene.layout.HBox;
import javafx.scene.text.TextFlow;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.look.Token;

/** A caution: warning triangle, bold lead, a line or two; it is always there and cannot be closed. */
public final class CautionBox extends HBox {

    public CautionBox(String lead, String rest) {
        getStyleClass().add("caution-box");
        TextFlow text = Words.led(lead, rest);
        getChildren().addAll(new Triangle(), Lay.grow(text));
        setAccessibleText("Caution. " + lead + " " + rest);
    }

    /** The warning triangle. */
    private static final class Triangle extends Drawing {

        private Triangle() {
            wish(1.28, 1.28);
            setMouseTransparent(true);
        }

        @Override
        protected void paint(Pen pen) {
            double mid = pen.width() / 2;
            double top = pen.px(2);
            double foot = pen.height() - pen.px(2);
            pen.stroke(Token.CAUTION, 1.5).outline(mid, top, pen.width() - pen.px(1.5), foot, pen.px(1.5), foot);
            pen.line(mid, top + pen.px(5), mid, foot - pen.px(4.5));
            pen.area(mid - pen.px(0.9), foot - pen.px(3.3), pen.px(1.8), pen.px(1.8), Token.CAUTION);
        }
    }
}
