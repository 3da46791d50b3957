package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;

/** Where words stand on the drawing, so that none print over others: those that would are moved on until they do not. */
final class Labels {

    private static final int MOST_MOVES = 24;

    /** A box around words, px. */
    record Box(double left, double top, double right, double bottom) {

        private boolean meets(Box other) {
            return left < other.right && right > other.left && top < other.bottom && bottom > other.top;
        }

        private Box moved(double x, double y) {
            return new Box(left + x, top + y, right + x, bottom + y);
        }

        double middle() {
            return (top + bottom) / 2;
        }
    }

    private final List<Box> taken = new ArrayList<>();

    /** The box of one line that begins at the left, on its middle. */
    static Box line(Pen pen, String text, TextRole role, double left, double middle) {
        double half = pen.px(7);
        return new Box(left, middle - half, left + pen.textWidth(text, role), middle + half);
    }

    /** Keeps a place whose words cannot move. */
    void take(Box box) {
        taken.add(box);
    }

    /** Takes the first place that is free from the wished one on, moved by so many pixels each time. */
    Box place(Box wished, double stepX, double stepY) {
        Box box = wished;
        for (int i = 0; i < MOST_MOVES && !isFree(box); i++) {
            box = box.moved(stepX, stepY);
        }
        taken.add(box);
        return box;
    }

    private boolean isFree(Box box) {
        return taken.stream().noneMatch(box::meets);
    }
}
