package org.rafterbook.ui.review;

import org.rafterbook.review.Word;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.look.Token;

/** The sign beside the word of an effect: filled, half or open triangle, two lines, or dashes. */
final class EffectMark extends Drawing {

    private final Word word;

    EffectMark(Word word) {
        this.word = word;
        wish(1.2, 1.2);
    }

    @Override
    protected void paint(Pen pen) {
        double x = pen.width() / 2;
        double y = pen.height() / 2;
        double arm = pen.px(5);
        switch (word) {
            case NO_CLEAR_DIFFERENCE ->
                pen.stroke(Token.INK_2, 1.6)
                        .line(x - arm, y - pen.px(2), x + arm, y - pen.px(2))
                        .line(x - arm, y + pen.px(3), x + arm, y + pen.px(3));
            case CANNOT_BE_TOLD_APART, NO_ANSWER_YET ->
                pen.stroke(Token.INK_2, 1.6).dashed(3, 2).line(x - arm, y, x + arm, y);
            default ->
                pen.mark(
                        isUp() ? MarkShape.UP_TRIANGLE : MarkShape.DOWN_TRIANGLE,
                        !word.isClaim() ? Token.INK_2 : isUp() ? Token.GOOD : Token.CAUTION,
                        style(),
                        x,
                        y,
                        8.5);
        }
    }

    private boolean isUp() {
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
