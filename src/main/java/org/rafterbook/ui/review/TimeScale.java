package org.rafterbook.ui.review;

import java.util.List;
import java.util.Locale;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewPoint;

/**
 * The upright scale of times, shared by history and plot; it need not start at 0.
 *
 * @param lowS time at the foot, s
 * @param highS time at the top, s
 * @param stepS from one numbered line to the next, s
 */
record TimeScale(double lowS, double highS, double stepS) {

    private static final int LEAST_LINES = 3;
    private static final double[] STEPS = {5, 10, 15, 30, 60, 120, 300, 600, 1200, 3600};

    /** A scale that holds every flight that counts. */
    static TimeScale of(ModelReview answer) {
        List<ReviewPoint> in = answer.points().stream()
                .filter(p -> p.timed() && p.flight().counts())
                .toList();
        if (in.isEmpty()) {
            return new TimeScale(0, 600, 120);
        }
        double low = in.stream().mapToDouble(TimeScale::seconds).min().orElse(0);
        double high = in.stream().mapToDouble(TimeScale::seconds).max().orElse(600);
        double spread = Math.max(high - low, 0.05 * high);
        double step = STEPS[STEPS.length - 1];
        for (double candidate : STEPS) {
            if (spread / candidate <= 4) {
                step = candidate;
                break;
            }
        }
        double foot = Math.max(0, Math.floor((low - 0.15 * step) / step) * step);
        double top = Math.ceil((high + 0.35 * step) / step) * step;
        return new TimeScale(foot, Math.max(top, foot + LEAST_LINES * step), step);
    }

    /** The time a flight is drawn at: the one that counts, scaled to the full motor. */
    static double seconds(ReviewPoint point) {
        return point.flight().fullDurationS();
    }

    /** Where a time lies between foot and top of an area, pixels. */
    double y(double seconds, double top, double foot) {
        double share = (seconds - lowS) / (highS - lowS);
        return foot - Math.max(0, Math.min(1, share)) * (foot - top);
    }

    /** Grid lines across and their times at the left. */
    void draw(Pen pen, double left, double right, double top, double foot) {
        boolean whole = stepS % 60 == 0;
        int count = (int) Math.round((highS - lowS) / stepS);
        for (int i = 0; i <= count; i++) {
            double seconds = lowS + i * stepS;
            double y = y(seconds, top, foot);
            pen.stroke(Token.GRID_5, 1).line(left, y, right, y);
            if (i > 0 && i < count) {
                pen.text(
                        label(seconds, whole),
                        left - pen.px(8),
                        y,
                        TextRole.SMALL,
                        Token.INK_2,
                        HPos.RIGHT,
                        VPos.CENTER);
            }
        }
        pen.text(whole ? "min" : "m:ss", left - pen.px(8), top, TextRole.MICRO, Token.INK_2, HPos.RIGHT, VPos.CENTER);
        pen.text(label(lowS, whole), left - pen.px(8), foot, TextRole.SMALL, Token.INK_2, HPos.RIGHT, VPos.CENTER);
    }

    private static String label(double seconds, boolean whole) {
        long s = Math.round(seconds);
        return whole ? Long.toString(s / 60) : String.format(Locale.ROOT, "%d:%02d", s / 60, s % 60);
    }
}
