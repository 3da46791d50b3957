package org.rafterbook.ui.bench;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;
import org.rafterbook.work.MarginAnswer;

/** The airframe to scale, nose left: from above over the side view, on one millimetre rule. */
final class AirframeDrawing extends Drawing {

    private static final double RULE_PX = 34;
    private static final double EDGE_PX = 16;

    private @Nullable Airframe airframe;
    private @Nullable Airframe before;
    private @Nullable MarginAnswer margin;

    private double left;
    private double scale;

    AirframeDrawing() {
        setAccessibleText("The airframe from above and from the side, to scale");
    }

    /** Shows an airframe, and as a ghost how it was before the change. */
    void show(@Nullable Airframe now, @Nullable Airframe ghost, @Nullable MarginAnswer answer) {
        airframe = now;
        before = ghost;
        margin = answer;
        repaint();
    }

    @Override
    protected void paint(Pen pen) {
        Airframe plane = airframe;
        pen.area(0, 0, pen.width(), pen.height(), Token.SHEET);
        if (plane == null || plane.surfaces().isEmpty()) {
            return;
        }
        double aft = 0.05;
        double half = 0.05;
        double low = 0;
        double high = 0.03;
        for (Surface s : plane.surfaces()) {
            for (Rib rib : s.ribs()) {
                aft = Math.max(aft, s.edgeAftM() + rib.edgeAftM() + rib.chordM());
                half = Math.max(half, s.role() == Role.FIN ? 0 : rib.outM());
                high = Math.max(high, s.riseM() + rib.riseM() + (s.role() == Role.FIN ? rib.outM() : 0));
                low = Math.min(low, s.riseM() + rib.riseM());
            }
        }
        double edge = pen.px(EDGE_PX);
        double rule = pen.px(RULE_PX);
        double nose = 0.03;
        double captions = pen.px(56);
        double wide = (pen.width() - 2 * edge) / (aft + 2 * nose);
        double tall = (pen.height() - rule - captions - 2 * edge) / (2 * half + (high - low) + 0.06);
        scale = Math.max(1, Math.min(Math.min(wide, tall), pen.px(4) * 1000));
        left = (pen.width() - (aft + nose) * scale) / 2 + nose * scale / 2;
        grid(pen, rule);
        ruler(pen, rule);
        double middle = rule + pen.px(28) + half * scale;
        double stick = middle + half * scale + pen.px(36) + (high + 0.02) * scale;
        pen.text("From above", edge, rule + pen.px(14), TextRole.CAPTION, Token.INK, HPos.LEFT, VPos.CENTER);
        pen.text(
                "From the left side",
                edge,
                middle + half * scale + pen.px(24),
                TextRole.CAPTION,
                Token.INK,
                HPos.LEFT,
                VPos.CENTER);
        Airframe ghost = before;
        if (ghost != null) {
            for (Surface s : ghost.surfaces()) {
                if (s.role() != Role.FIN) {
                    pen.stroke(Token.INK_3, 1).dashed(4, 3);
                    pen.outline(outline(s, middle));
                }
            }
        }
        for (Surface s : plane.surfaces()) {
            above(pen, s, middle);
            side(pen, s, stick);
        }
        stick(pen, aft, middle);
        stick(pen, aft, stick);
        points(pen, middle, stick);
    }

    private double x(double aftM) {
        return left + aftM * scale;
    }

    private void grid(Pen pen, double top) {
        for (int mm = 10 * (int) Math.floor(-left / scale * 100); x(mm / 1000.0) < pen.width(); mm += 10) {
            pen.stroke(mm % 50 == 0 ? Token.GRID_5 : Token.GRID, 1);
            pen.line(x(mm / 1000.0), top, x(mm / 1000.0), pen.height());
        }
        double step = 0.01 * scale;
        int count = 0;
        for (double y = top; y < pen.height(); y += step) {
            pen.stroke(count++ % 5 == 0 ? Token.GRID_5 : Token.GRID, 1);
            pen.line(0, y, pen.width(), y);
        }
    }

    private void ruler(Pen pen, double bottom) {
        pen.area(0, 0, pen.width(), bottom, Token.RAISED);
        pen.stroke(Token.EDGE, 1);
        pen.line(0, bottom, pen.width(), bottom);
        for (int mm = 10 * (int) Math.floor(-left / scale * 100); x(mm / 1000.0) < pen.width(); mm += 10) {
            double tick = mm % 50 == 0 ? 10 : 6;
            pen.line(x(mm / 1000.0), bottom - pen.px(tick), x(mm / 1000.0), bottom);
            if (mm % 50 == 0) {
                pen.text(
                        String.valueOf(mm).replace('-', '−'),
                        x(mm / 1000.0),
                        bottom - pen.px(18),
                        TextRole.MICRO,
                        Token.INK_2,
                        HPos.CENTER,
                        VPos.CENTER);
            }
        }
    }

    private double[] outline(Surface s, double middle) {
        List<Rib> right = s.ribs();
        List<Rib> port = s.leftRibs();
        double[] xy = new double[4 * (right.size() + port.size())];
        int k = 0;
        for (int i = port.size() - 1; i >= 0; i--) {
            k = put(xy, k, x(s.edgeAftM() + port.get(i).edgeAftM()), middle + side(s, port.get(i), -1));
        }
        for (Rib rib : right) {
            k = put(xy, k, x(s.edgeAftM() + rib.edgeAftM()), middle + side(s, rib, 1));
        }
        for (int i = right.size() - 1; i >= 0; i--) {
            Rib rib = right.get(i);
            k = put(xy, k, x(s.edgeAftM() + rib.edgeAftM() + rib.chordM()), middle + side(s, rib, 1));
        }
        for (Rib rib : port) {
            k = put(xy, k, x(s.edgeAftM() + rib.edgeAftM() + rib.chordM()), middle + side(s, rib, -1));
        }
        return xy;
    }

    /** From above, nose left, the flyer's left is below. */
    private double side(Surface s, Rib rib, int right) {
        return -(right * rib.outM() - s.offsetLeftM()) * scale;
    }

    private static int put(double[] xy, int at, double x, double y) {
        xy[at] = x;
        xy[at + 1] = y;
        return at + 2;
    }

    private void above(Pen pen, Surface s, double middle) {
        if (s.role() == Role.FIN) {
            return;
        }
        pen.shape(Token.TISSUE, outline(s, middle));
        pen.stroke(Token.WOOD, 0.8);
        for (Rib rib : s.ribs()) {
            for (int hand : new int[] {-1, 1}) {
                double y = middle + side(s, rib, hand);
                double from = s.edgeAftM() + rib.edgeAftM();
                pen.line(x(from), y, x(from + rib.chordM()), y);
            }
        }
        pen.stroke(Token.WOOD, 1.6);
        pen.outline(outline(s, middle));
    }

    private void side(Pen pen, Surface s, double stick) {
        Rib root = s.ribs().get(0);
        double y = stick - s.riseM() * scale;
        if (s.role() == Role.FIN) {
            pen.stroke(Token.WOOD, 1.6);
            double[] xy = new double[4 * s.ribs().size()];
            int k = 0;
            for (Rib rib : s.ribs()) {
                k = put(xy, k, x(s.edgeAftM() + rib.edgeAftM()), y - rib.outM() * scale);
            }
            for (int i = s.ribs().size() - 1; i >= 0; i--) {
                Rib rib = s.ribs().get(i);
                k = put(xy, k, x(s.edgeAftM() + rib.edgeAftM() + rib.chordM()), y - rib.outM() * scale);
            }
            pen.outline(xy);
            return;
        }
        int steps = 12;
        double[] xs = new double[steps + 1];
        double[] ys = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            double t = i / (double) steps;
            double along = t * root.chordM();
            double camber = 4 * s.camber() * t * (1 - t) * root.chordM();
            double up = camber - along * Math.sin(s.incidenceRad() + root.twistRad());
            xs[i] = x(s.edgeAftM() + along);
            ys[i] = y - up * scale;
        }
        pen.stroke(Token.INK, 2.4);
        pen.path(xs, ys, steps + 1);
        pen.stroke(Token.WOOD, 1.6);
        for (double post : new double[] {0.1, 0.9}) {
            double at = x(s.edgeAftM() + post * root.chordM());
            pen.line(at, ys[(int) Math.round(post * steps)], at, stick);
        }
    }

    private void stick(Pen pen, double aft, double y) {
        pen.stroke(Token.WOOD, 2.4);
        pen.line(x(0), y, x(aft), y);
    }

    private void points(Pen pen, double middle, double stick) {
        MarginAnswer m = margin;
        if (m == null) {
            return;
        }
        double s = pen.px(7);
        Double balance = m.balanceM();
        if (balance != null) {
            double x = x(balance);
            pen.shape(Token.INK, x, stick + 2, x - s, stick + 2 + 1.6 * s, x + s, stick + 2 + 1.6 * s);
            pen.shape(Token.INK, x, middle, x - s, middle + 1.6 * s, x + s, middle + 1.6 * s);
            pen.shape(Token.INK, x, middle, x - s, middle - 1.6 * s, x + s, middle - 1.6 * s);
            pen.textOn(
                    Token.SHEET,
                    "balance " + BenchWords.millimetres(balance),
                    x - 1.4 * s,
                    stick + pen.px(20),
                    TextRole.SMALL_BOLD,
                    Token.INK,
                    HPos.RIGHT,
                    VPos.CENTER);
        }
        Double neutral = m.neutralPointM();
        if (neutral != null) {
            double x = x(neutral);
            boolean unstable = balance != null && neutral < balance;
            Token token = unstable ? Token.STOP : Token.INK;
            double eye = stick - pen.px(14);
            pen.stroke(token, 1.6);
            pen.canvas().strokeOval(x - 0.6 * s, eye - 0.6 * s, 1.2 * s, 1.2 * s);
            pen.line(x, eye - 0.6 * s, x, eye - 2.6 * s);
            pen.shape(token, x, eye - 3.4 * s, x - 0.5 * s, eye - 2.4 * s, x + 0.5 * s, eye - 2.4 * s);
            pen.canvas().strokeOval(x - 0.6 * s, middle - 0.6 * s, 1.2 * s, 1.2 * s);
            pen.textOn(
                    Token.SHEET,
                    "neutral " + BenchWords.millimetres(neutral),
                    x + 1.4 * s,
                    stick + pen.px(20),
                    TextRole.SMALL_BOLD,
                    token,
                    HPos.LEFT,
                    VPos.CENTER);
        }
    }
}
