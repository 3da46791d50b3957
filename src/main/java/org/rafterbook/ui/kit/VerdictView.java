package org.rafterbook.ui.kit;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;

/** The word for an effect with its glyph, never one without the other. */
public final class VerdictView extends HBox {

    private final VerdictGlyph glyph = new VerdictGlyph();
    private final Label words = Words.body("");

    public VerdictView(Verdict verdict) {
        getStyleClass().add("gap-8");
        setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(glyph, words);
        show(verdict);
    }

    /** Shows another one. */
    public void show(Verdict verdict) {
        glyph.verdict = verdict;
        glyph.repaint();
        words.setText(verdict.words());
    }

    private static final class VerdictGlyph extends Drawing {

        private Verdict verdict = Verdict.NO_ANSWER_YET;

        private VerdictGlyph() {
            wish(0.96, 1.12);
            setMouseTransparent(true);
        }

        @Override
        protected void paint(Pen pen) {
            double mid = pen.height() / 2;
            double left = pen.px(1);
            double right = pen.width() - pen.px(1);
            pen.stroke(verdict.token(), 1.4);
            switch (verdict) {
                case NO_CLEAR_DIFFERENCE ->
                    pen.line(left, mid - pen.px(2.5), right, mid - pen.px(2.5))
                            .line(left, mid + pen.px(2.5), right, mid + pen.px(2.5));
                case CANNOT_BE_TOLD_APART, NO_ANSWER_YET ->
                    pen.stroke(verdict.token(), 2).dashed(2.5, 2).line(left, mid, right, mid);
                default -> pen.mark(verdict.shape(), verdict.token(), verdict.style(), pen.width() / 2, mid, 10);
            }
        }
    }
}
