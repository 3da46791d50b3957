package org.rafterbook.ui.draw;

import org.rafterbook.ui.look.Token;

/**
 * The mark a version keeps for life, in every place. Marks are dealt in the order in which versions were first made:
 * the six shapes in turn, each with its own colour, and from the seventh on the pairing of shape and colour turns by
 * one, so that versions next to each other always differ in both.
 *
 * @param colour number of the chart colour, 0 to 5
 */
public record VersionMark(MarkShape shape, int colour) {

    /** The mark dealt to the version with the given number, counted from 0. */
    public static VersionMark dealt(int number) {
        int shapes = MarkShape.values().length;
        int round = number / shapes;
        return new VersionMark(MarkShape.values()[number % shapes], (number + round) % shapes);
    }

    public Token token() {
        return Token.chart(colour);
    }
}
