package org.rafterbook.ui.kit;

import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.look.Token;

/** How an effect is put in words; its glyph and colour say the same. */
public enum Verdict {
    RAISED("raised"),
    VERY_PROBABLY_RAISED("very probably raised"),
    PROBABLY_RAISED("probably raised"),
    NO_CLEAR_DIFFERENCE("no clear difference"),
    PROBABLY_LOWERED("probably lowered"),
    VERY_PROBABLY_LOWERED("very probably lowered"),
    LOWERED("lowered"),
    CANNOT_BE_TOLD_APART("can’t be told apart"),
    NO_ANSWER_YET("no answer yet");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    MarkShape shape() {
        return switch (this) {
            case PROBABLY_LOWERED, VERY_PROBABLY_LOWERED, LOWERED -> MarkShape.DOWN_TRIANGLE;
            default -> MarkShape.UP_TRIANGLE;
        };
    }

    MarkStyle style() {
        return switch (this) {
            case RAISED, LOWERED -> MarkStyle.CLEAN;
            case VERY_PROBABLY_RAISED, VERY_PROBABLY_LOWERED -> MarkStyle.HALF;
            default -> MarkStyle.OPEN;
        };
    }

    /** Colour only from "very probably" on. */
    Token token() {
        return switch (this) {
            case RAISED, VERY_PROBABLY_RAISED -> Token.GOOD;
            case LOWERED, VERY_PROBABLY_LOWERED -> Token.CAUTION;
            default -> Token.INK_2;
        };
    }
}
