package org.rafterbook.ui.bench;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;
import org.rafterbook.ui.chart.Scale;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.QuantityFormat;

/** Paints an airframe from the left side: sections at true incidence, posts, stick and motor. */
final class SideView {

    private static final int PIECES = 12;

    private final Pen pen;
    private final Scale x;
    private final AirframeFit fit;
    private final Labels labels;

    SideView(Pen pen, Scale x, AirframeFit fit, Labels labels) {
        this.labels = labels;
        this.pen = pen;
        this.x = x;
        this.fit = fit;
    }

    double x(double aftM) {
        return x.at(aftM * 1000);
    }

    double y(double riseM) {
        return fit.stickPx() - riseM * 1000 * fit.pxPerMm();
    }

    void paint(Airframe airframe) {
        airframe.surfaces().stream().filter(s -> s.role() == Role.FIN).forEach(this::fin);
        airframe.surfaces().stream().filter(s -> s.role() != Role.FIN).forEach(this::posts);
        stick(airframe);
        airframe.surfaces().stream().filter(s -> s.role() != Role.FIN).forEach(s -> {
            raised(s);
            section(s, s.ribs().get(0), Token.INK, 2.4);
        });
    }

    void ghost(Airframe before, Airframe now) {
        for (Surface s : before.surfaces()) {
            boolean same = now.surfaces().contains(s);
            if (s.role() != Role.FIN && !same) {
                pen.stroke(Token.INK_3, 1).dashed(4, 3);
                curve(s, s.ribs().get(0));
            }
        }
    }

    private void section(Surface s, Rib rib, Token ink, double width) {
        pen.stroke(ink, width).dashed();
        curve(s, rib);
    }

    /** The camber line of one rib at its incidence. */
    private void curve(Surface s, Rib rib) {
        double[] xs = new double[PIECES + 1];
        double[] ys = new double[PIECES + 1];
        double angle = s.incidenceRad() + rib.twistRad();
        for (int i = 0; i <= PIECES; i++) {
            double t = i / (double) PIECES;
            double along = t * rib.chordM();
            double camber = 4 * s.camber() * t * (1 - t) * rib.chordM();
            xs[i] = x(s.edgeAftM() + rib.edgeAftM() + along * Math.cos(angle) + camber * Math.sin(angle));
            ys[i] = y(s.riseM() + rib.riseM() - along * Math.sin(angle) + camber * Math.cos(angle));
        }
        pen.path(xs, ys, PIECES + 1);
    }

    /** Raised tips as a dotted section. */
    private void raised(Surface s) {
        Rib tip = s.ribs().get(s.ribs().size() - 1);
        for (Rib rib : s.ribs()) {
            // a rounded tip ends in a point: the last rib with a chord shows where it is
            tip = rib.chordM() > 0.2 * s.ribs().get(0).chordM() ? rib : tip;
        }
        if (Math.abs(tip.riseM()) > 0.002) {
            pen.stroke(Token.WOOD, 1.2).dashed(1.5, 2.5);
            curve(s, tip);
        }
        if (Math.abs(tip.riseM()) > 0.002 && fit.isRoomy(pen.px(1))) {
            String words = "tips, raised " + QuantityFormat.rounded(tip.riseM() * 1000, 0);
            double behind = x(s.edgeAftM() + s.ribs().get(0).chordM()) + pen.px(6);
            Labels.Box place = labels.place(
                    Labels.line(pen, words, TextRole.SMALL, behind, y(s.riseM() + tip.riseM())), pen.px(8), 0);
            pen.textOn(
                    Token.SHEET,
                    words,
                    place.left(),
                    place.middle(),
                    TextRole.SMALL,
                    Token.INK_2,
                    HPos.LEFT,
                    VPos.CENTER);
        }
    }

    private void posts(Surface s) {
        Rib root = s.ribs().get(0);
        if (Math.abs(s.riseM()) < 0.004) {
            return;
        }
        pen.stroke(Token.WOOD, 1.6).dashed();
        for (double at : new double[] {0.12, 0.85}) {
            double along = at * root.chordM();
            double foot = s.riseM() - along * Math.sin(s.incidenceRad());
            double px = x(s.edgeAftM() + along);
            pen.line(px, y(foot), px, fit.stickPx());
        }
    }

    private void stick(Airframe airframe) {
        double y = fit.stickPx();
        double aft = AboveView.aft(airframe);
        pen.stroke(Token.WOOD, 2.4).dashed();
        pen.line(x(0), y, x(aft), y);
        double s = pen.px(9);
        pen.shape(Token.TISSUE_2, x(0) - s, y - s * 0.8, x(0), y, x(0) - s, y + s * 0.8);
        pen.stroke(Token.WOOD, 1.2);
        pen.outline(x(0) - s, y - s * 0.8, x(0), y, x(0) - s, y + s * 0.8);
        MotorPlace motor = airframe.motor();
        if (motor != null && motor.aftM() > 0.01) {
            slack(x(0) + pen.px(4), x(2 * motor.aftM()) - pen.px(4), y);
        }
    }

    /** The motor hangs slack below the stick between hooks that lie alike far from its middle. */
    private void slack(double from, double to, double y) {
        double[] xs = new double[PIECES + 1];
        double[] ys = new double[PIECES + 1];
        for (int i = 0; i <= PIECES; i++) {
            double t = i / (double) PIECES;
            xs[i] = from + t * (to - from);
            ys[i] = y + pen.px(3) + 4 * t * (1 - t) * pen.px(9);
        }
        pen.stroke(Token.WOOD, 2).dashed();
        pen.path(xs, ys, PIECES + 1);
    }

    private void fin(Surface s) {
        int n = s.ribs().size();
        double[] xy = new double[4 * n];
        for (int i = 0; i < n; i++) {
            Rib rib = s.ribs().get(i);
            xy[2 * i] = x(s.edgeAftM() + rib.edgeAftM());
            xy[2 * i + 1] = y(s.riseM() + rib.outM());
            int back = 2 * (2 * n - 1 - i);
            xy[back] = x(s.edgeAftM() + rib.edgeAftM() + rib.chordM());
            xy[back + 1] = y(s.riseM() + rib.outM());
        }
        pen.shape(Token.TISSUE, xy);
        pen.stroke(Token.WOOD, 1.6).dashed();
        pen.outline(xy);
    }

    /** Chord of one wing; gap and stagger of two. */
    void dimensions(Airframe airframe) {
        WingGeometry wings = WingGeometry.of(airframe);
        Surface upper = wings.upperWing();
        Surface lower = wings.lowerWing();
        if (upper != null && lower != null) {
            gap(upper, lower);
        } else if (!wings.wings().isEmpty()) {
            chord(wings.wings().get(0));
        }
    }

    private void gap(Surface upper, Surface lower) {
        double right = Math.max(
                        x(upper.edgeAftM() + upper.ribs().get(0).chordM()),
                        x(lower.edgeAftM() + lower.ribs().get(0).chordM()))
                + pen.px(112);
        pen.stroke(Token.LINE, 1).dashed();
        pen.line(
                x(upper.edgeAftM() + upper.ribs().get(0).chordM()) + pen.px(6),
                y(upper.riseM()),
                right,
                y(upper.riseM()));
        pen.line(
                x(lower.edgeAftM() + lower.ribs().get(0).chordM()) + pen.px(6),
                y(lower.riseM()),
                right,
                y(lower.riseM()));
        Dimensions.upright(
                pen,
                right,
                y(upper.riseM()),
                y(lower.riseM()),
                "gap " + QuantityFormat.rounded((upper.riseM() - lower.riseM()) * 1000, 0));
        double stagger = lower.edgeAftM() - upper.edgeAftM();
        if (Math.abs(stagger) > 0.0005) {
            double top = fit.sideTopPx() + pen.px(33);
            Dimensions.level(
                    pen,
                    x(upper.edgeAftM()),
                    x(lower.edgeAftM()),
                    top,
                    "stagger " + QuantityFormat.rounded(stagger * 1000, 0),
                    Token.INK,
                    TextRole.SMALL);
        }
    }

    private void chord(Surface wing) {
        double y = fit.sideTopPx() + pen.px(33);
        double root = wing.ribs().get(0).chordM();
        Dimensions.level(
                pen,
                x(wing.edgeAftM()),
                x(wing.edgeAftM() + root),
                y,
                "chord " + QuantityFormat.rounded(root * 1000, 0),
                Token.INK,
                TextRole.SMALL);
    }
}
