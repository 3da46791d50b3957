package org.rafterbook.ui.review;

import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.look.Token;
import org.rafterbook.work.ReviewPoint;

/** Draws one flight as its version's mark: filled where clean, open with a tick where it is "at least". */
final class FlightMarks {

    static final double SIZE = 8.5;

    /** Share of the full colour for flights that are not in front. */
    private static final double BEHIND = 0.22;

    private FlightMarks() {}

    static VersionMark of(int versionNumber) {
        return VersionMark.dealt(versionNumber - 1);
    }

    static void draw(Pen pen, ReviewPoint point, double x, double y, double size, boolean inFront, boolean picked) {
        double half = point.flight().motor().isPartial() ? size / 2 : size;
        pen.canvas().setGlobalAlpha(inFront ? 1 : BEHIND);
        if (!point.flight().counts()) {
            double arm = pen.px(half * 0.4);
            pen.stroke(Token.INK_3, 1.4).line(x - arm, y - arm, x + arm, y + arm);
            pen.line(x - arm, y + arm, x + arm, y - arm);
        } else {
            pen.mark(of(point.versionNumber()), style(point), x, y, half);
        }
        pen.canvas().setGlobalAlpha(1);
        if (picked) {
            double ring = pen.px(SIZE);
            pen.stroke(Token.ACCENT, 2);
            pen.canvas().strokeOval(x - ring, y - ring, 2 * ring, 2 * ring);
        }
    }

    private static MarkStyle style(ReviewPoint point) {
        return point.atLeast() ? MarkStyle.AT_LEAST : MarkStyle.CLEAN;
    }
}
