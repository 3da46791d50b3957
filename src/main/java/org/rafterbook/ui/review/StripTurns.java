package org.rafterbook.ui.review;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.chart.Frame;
import org.rafterbook.ui.chart.Layer;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;

/**
 * Trim changes on the history strip: an upright hairline each with the change written at its head, shortened to the
 * version's name where the next one is near; a return is dotted and quiet.
 */
record StripTurns(List<StripPlan.Turn> turns) implements Layer {

    @Override
    public void paint(Frame frame) {
        Pen pen = frame.pen();
        double free = 0;
        for (int i = 0; i < turns.size(); i++) {
            StripPlan.Turn turn = turns.get(i);
            double x = frame.px(turn.place());
            pen.stroke(turn.back() ? Token.LINE : Token.EDGE, 1.2);
            if (turn.back()) {
                pen.dashed(2, 3);
            }
            pen.line(x, pen.px(6), x, frame.bottom());
            if (turn.repeated() || x < free) {
                continue;
            }
            String label = fits(pen, turn.label(), x, next(frame, i)) ? turn.label() : turn.version();
            if (fits(pen, label, x, pen.width())) {
                pen.text(
                        label,
                        x + pen.px(4),
                        pen.px(12),
                        TextRole.SMALL,
                        turn.back() ? Token.INK_3 : Token.INK,
                        HPos.LEFT,
                        VPos.CENTER);
                free = x + pen.textWidth(label, TextRole.SMALL) + pen.px(8);
            }
        }
    }

    /** Where the next one is that has a label. */
    private double next(Frame frame, int after) {
        for (int k = after + 1; k < turns.size(); k++) {
            if (!turns.get(k).repeated()) {
                return frame.px(turns.get(k).place());
            }
        }
        return frame.pen().width();
    }

    private static boolean fits(Pen pen, String label, double x, double next) {
        return x + pen.px(10) + pen.textWidth(label, TextRole.SMALL) < next;
    }
}
