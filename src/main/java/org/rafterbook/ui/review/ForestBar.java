package org.rafterbook.ui.review;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;
import org.rafterbook.work.ReviewChange;

/** One row of the forest plot, or its axis: per cent across with a firm line at 0. */
final class ForestBar extends Drawing {

    private static final double SIDE = 12;
    private static final int FEW = 3;
    private static final double LEAST_REACH = 10;
    private static final double MOST_REACH = 30;

    private final @Nullable ReviewChange change;
    private final double reach;

    /** The axis for a table head. */
    static ForestBar axis(double reach) {
        ForestBar axis = new ForestBar(null, reach);
        axis.wish(-1, 1.7);
        return axis;
    }

    ForestBar(@Nullable ReviewChange change, double reach) {
        this.change = change;
        this.reach = reach;
    }

    /** Per cent on each side of 0 that hold most intervals. */
    static double reach(List<ReviewChange> changes) {
        double most = 0;
        for (ReviewChange change : changes) {
            Double low = change.lowPercent();
            Double high = change.highPercent();
            Double effect = change.effectPercent();
            most = Math.max(most, low == null ? 0 : Math.abs(low));
            most = Math.max(most, high == null ? 0 : Math.abs(high));
            most = Math.max(most, effect == null ? 0 : Math.abs(effect));
        }
        return Math.min(MOST_REACH, Math.max(LEAST_REACH, Math.ceil(most / 10) * 10));
    }

    private double x(Pen pen, double percent) {
        double side = pen.px(SIDE);
        return pen.width() / 2 + percent / reach * (pen.width() / 2 - side);
    }

    @Override
    protected void paint(Pen pen) {
        double foot = pen.height();
        if (change == null) {
            axis(pen, foot);
            return;
        }
        for (double at = -reach; at <= reach; at += reach / 2) {
            pen.stroke(at == 0 ? Token.INK_2 : Token.GRID_5, at == 0 ? 1.6 : 1).line(x(pen, at), 0, x(pen, at), foot);
        }
        bar(pen, change, foot / 2);
    }

    private void axis(Pen pen, double foot) {
        String most = Long.toString(Math.round(reach));
        double y = foot - pen.px(11);
        pen.text("−" + most, x(pen, -reach), y, TextRole.MICRO, Token.INK_2, HPos.CENTER, VPos.CENTER);
        pen.text("0", x(pen, 0), y, TextRole.MICRO, Token.INK_2, HPos.CENTER, VPos.CENTER);
        pen.text(
                "+" + most + " %",
                Math.min(x(pen, reach), pen.width() - pen.textWidth("+" + most + " %", TextRole.MICRO) / 2),
                y,
                TextRole.MICRO,
                Token.INK_2,
                HPos.CENTER,
                VPos.CENTER);
        for (double at = -reach; at <= reach; at += reach / 2) {
            pen.stroke(Token.EDGE, 1).line(x(pen, at), foot - pen.px(4), x(pen, at), foot);
        }
    }

    private void bar(Pen pen, ReviewChange now, double y) {
        Double effect = now.effectPercent();
        if (effect == null) {
            return;
        }
        Double low = now.lowPercent();
        Double high = now.highPercent();
        if (low != null && high != null) {
            double from = x(pen, Math.max(-reach, low));
            double to = x(pen, Math.min(reach, high));
            pen.stroke(Token.INK, 2).line(from, y, to, y);
            end(pen, from, y, low < -reach ? -1 : 0);
            end(pen, to, y, high > reach ? 1 : 0);
        }
        double x = x(pen, Math.max(-reach, Math.min(reach, effect)));
        double half = pen.px(5);
        double[] diamond = {x, y - half, x + half, y, x, y + half, x - half, y};
        if (Math.min(now.flightsFrom(), now.flightsTo()) >= FEW) {
            pen.shape(Token.INK, diamond);
        } else {
            pen.shape(Token.SHEET, diamond).stroke(Token.INK, 1.6).outline(diamond);
        }
    }

    /** An end cap, or an arrowhead where the bar leaves the plot. */
    private static void end(Pen pen, double x, double y, int leaves) {
        double half = pen.px(5);
        if (leaves == 0) {
            pen.stroke(Token.INK, 2).line(x, y - half, x, y + half);
        } else {
            pen.shape(Token.INK, x + leaves * half, y, x - leaves * half, y - half, x - leaves * half, y + half);
        }
    }
}
