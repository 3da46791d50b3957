package org.rafterbook.ui.kit;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.rafterbook.review.Word;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.look.Token;

/** The word for an effect with its sign, never one without the other. */
public final class EffectWordView extends HBox {

    public EffectWordView(Word word) {
        getStyleClass().add("gap-4");
        setAlignment(Pos.CENTER_LEFT);
        String text = word == Word.CANNOT_BE_TOLD_APART ? "can't be told apart" : word.word();
        Label words = word == Word.RAISED || word == Word.LOWERED ? Words.bold(text) : Words.body(text);
        getChildren().addAll(new Sign(word), words);
    }

    private static final class Sign extends Drawing {

        private final Word word;

        private Sign(Word word) {
            this.word = word;
            wish(0.96, 1.12);
            setMouseTransparent(true);
        }

        @Override
        protected void paint(Pen pen) {
            double mid = pen.height() / 2;
            double left = pen.px(1);
            double right = pen.width() - pen.px(1);
            pen.stroke(token(), 1.4);
            switch (word) {
                case NO_CLEAR_DIFFERENCE ->
                    pen.line(left, mid - pen.px(2.5), right, mid - pen.px(2.5))
                            .line(left, mid + pen.px(2.5), right, mid + pen.px(2.5));
                case CANNOT_BE_TOLD_APART, NO_ANSWER_YET ->
                    pen.stroke(token(), 2).dashed(2.5, 2).line(left, mid, right, mid);
                default ->
                    pen.mark(
                            up() ? MarkShape.UP_TRIANGLE : MarkShape.DOWN_TRIANGLE,
                            token(),
                            style(),
                            pen.width() / 2,
                            mid,
                            10);
            }
        }

        /** Colour only from "very probably" on. */
        private Token token() {
            return !word.isClaim() ? Token.INK_2 : up() ? Token.GOOD : Token.CAUTION;
        }

        private boolean up() {
            return word == Word.RAISED || word == Word.VERY_PROBABLY_RAISED || word == Word.PROBABLY_RAISED;
        }

        private MarkStyle style() {
            return switch (word) {
                case RAISED, LOWERED -> MarkStyle.CLEAN;
                case VERY_PROBABLY_RAISED, VERY_PROBABLY_LOWERED -> MarkStyle.HALF;
                default -> MarkStyle.OPEN;
            };
        }
    }
}
