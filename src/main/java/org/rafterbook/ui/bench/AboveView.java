package org.rafterbook.ui.bench;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.kit.SettingWords;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.Unit;

/** Paints an airframe from above. */
final class AboveView {

    private static final double LINE_PX = 14;

    private final Pen pen;
    private final Outline outline;
    private final AirframeFit fit;
    private final Labels labels;

    /** How far to the left the wings' names reach. */
    private double namesPx = Double.POSITIVE_INFINITY;

    AboveView(Pen pen, Outline outline, AirframeFit fit, Labels labels) {
        this.labels = labels;
        this.pen = pen;
        this.outline = outline;
        this.fit = fit;
    }

    void ghost(Airframe before) {
        for (Surface s : before.surfaces()) {
            if (s.role() != Role.FIN) {
                pen.stroke(Token.INK_3, 1).dashed(4, 3);
                pen.outline(outline.of(s));
            }
        }
    }

    /** Tailplane and lower wings first, so that the upper wing lies over them. */
    void paint(Airframe airframe) {
        WingGeometry wings = WingGeometry.of(airframe);
        Surface lower = wings.lowerWing();
        airframe.surfaces().stream().filter(s -> s.role() == Role.TAILPLANE).forEach(this::covered);
        if (lower == null) {
            wings.wings().forEach(this::covered);
        } else {
            // a lower wing is dashed where another lies over it
            wings.wings().stream().filter(w -> w != lower).forEach(this::covered);
            pen.stroke(Token.WOOD, 1.6).dashed(4, 3);
            pen.outline(outline.of(lower));
        }
        stick(airframe);
        for (Surface s : airframe.surfaces()) {
            if (s.role() != Role.FIN) {
                name(s, s == lower, wings.wings());
            }
        }
    }

    private void covered(Surface s) {
        pen.shape(Token.TISSUE, outline.of(s));
        ribs(s, s.ribs(), true);
        ribs(s, s.leftRibs(), false);
        pen.stroke(Token.WOOD, 1.6).dashed();
        pen.outline(outline.of(s));
    }

    /** Ribs the sheet names; where the dihedral breaks the line is heavier. */
    private void ribs(Surface s, List<Rib> ribs, boolean right) {
        for (int i = 0; i < ribs.size() - 1; i++) {
            Rib rib = ribs.get(i);
            double y = outline.y(s, rib.outM(), right);
            double from = s.edgeAftM() + rib.edgeAftM();
            boolean first = i == 0;
            boolean breaks = !first && bends(ribs.get(i - 1), rib, ribs.get(i + 1));
            if (!first || !right) {
                pen.stroke(Token.WOOD, breaks ? 1.6 : 0.8).dashed();
                pen.line(outline.x(from), y, outline.x(from + rib.chordM()), y);
            }
        }
    }

    private static boolean bends(Rib a, Rib b, Rib c) {
        double in = (b.riseM() - a.riseM()) / Math.max(1e-9, b.outM() - a.outM());
        double out = (c.riseM() - b.riseM()) / Math.max(1e-9, c.outM() - b.outM());
        return Math.abs(out - in) > 0.02;
    }

    private void stick(Airframe airframe) {
        double y = fit.middlePx();
        pen.stroke(Token.WOOD, 2.4).dashed();
        pen.line(outline.x(0), y, outline.x(aft(airframe)), y);
    }

    static double aft(Airframe airframe) {
        double aft = 0;
        for (Surface s : airframe.surfaces()) {
            for (Rib rib : s.ribs()) {
                aft = Math.max(aft, s.edgeAftM() + rib.edgeAftM() + rib.chordM());
            }
        }
        return aft;
    }

    /**
     * A wing's name stands ahead of its right tip, that of a wing below behind its left tip, a tailplane's behind it; on
     * no other wing, and one below the other where several tips lie there.
     */
    private void name(Surface s, boolean below, List<Surface> wings) {
        boolean ahead = s.role() == Role.WING && !below;
        Rib tip = last(ahead ? s.ribs() : s.leftRibs());
        double y = outline.y(s, tip.outM(), ahead) + pen.px(ahead ? 14 : -12);
        String words = s.name() + (below ? ", below" : "");
        double width = pen.textWidth(words, TextRole.SMALL);
        double edge = ahead ? s.edgeAftM() : s.edgeAftM() + s.ribs().get(0).chordM();
        for (Surface wing : s.role() == Role.WING ? wings : List.<Surface>of()) {
            if (outline.y(wing, last(wing.ribs()).outM(), true) < y
                    && outline.y(wing, last(wing.leftRibs()).outM(), false) > y) {
                edge = ahead ? Math.min(edge, foremost(wing)) : Math.max(edge, aftmost(wing));
            }
        }
        double left = outline.x(edge) + (ahead ? -pen.px(6) - width : pen.px(6));
        Labels.Box place =
                labels.place(Labels.line(pen, words, TextRole.SMALL, left, y), 0, pen.px(ahead ? LINE_PX : -LINE_PX));
        pen.textOn(Token.SHEET, words, place.left(), place.middle(), TextRole.SMALL, Token.INK, HPos.LEFT, VPos.CENTER);
        if (ahead) {
            namesPx = Math.min(namesPx, place.left());
        }
    }

    private static double foremost(Surface s) {
        double edge = s.edgeAftM();
        for (Rib rib : s.ribs()) {
            edge = Math.min(edge, s.edgeAftM() + rib.edgeAftM());
        }
        return edge;
    }

    private static double aftmost(Surface s) {
        double edge = s.edgeAftM();
        for (Rib rib : s.ribs()) {
            edge = Math.max(edge, s.edgeAftM() + rib.edgeAftM() + rib.chordM());
        }
        return edge;
    }

    /** The span of the longest wing at the left, tip to tip, ahead of all wings and their names. */
    void dimensions(Airframe airframe) {
        Surface longest = null;
        double span = 0;
        double ahead = 0;
        for (Surface s : airframe.surfaces()) {
            double own = span(s);
            if (s.role() != Role.FIN && own > span) {
                span = own;
                longest = s;
            }
            ahead = s.role() == Role.FIN ? ahead : Math.min(ahead, foremost(s));
        }
        if (longest != null) {
            double top = outline.y(longest, last(longest.ribs()).outM(), true);
            double foot = outline.y(longest, last(longest.leftRibs()).outM(), false);
            double x = Math.max(pen.px(16), Math.min(outline.x(ahead) - pen.px(24), namesPx - pen.px(8)));
            arrow(x, fit.middlePx() - pen.px(9), x, top);
            arrow(x, fit.middlePx() + pen.px(9), x, foot);
            pen.textOn(
                    Token.SHEET,
                    QuantityFormat.rounded(span * 1000, 0),
                    x,
                    fit.middlePx(),
                    TextRole.SMALL,
                    Token.INK,
                    HPos.CENTER,
                    VPos.CENTER);
        }
    }

    private static double span(Surface s) {
        return last(s.ribs()).outM() + last(s.leftRibs()).outM();
    }

    private static Rib last(List<Rib> ribs) {
        return ribs.get(ribs.size() - 1);
    }

    private void arrow(double x1, double y1, double x2, double y2) {
        Dimensions.arrow(pen, x1, y1, x2, y2);
    }

    /** What was changed, in the accent beside the wing. */
    void change(Airframe airframe, @Nullable Airframe before) {
        if (before == null) {
            return;
        }
        for (Surface now : airframe.surfaces()) {
            for (Surface then : before.surfaces()) {
                double mm = (now.edgeAftM() - then.edgeAftM()) * 1000;
                if (now.name().equals(then.name()) && Math.abs(mm) > 0.005 && now.role() != Role.FIN) {
                    double y = outline.y(now, last(now.leftRibs()).outM() * 0.84, false);
                    String words = SettingWords.inUnit(Math.abs(mm) / 1000, Unit.MM) + (mm < 0 ? " forward" : " back");
                    double ahead = outline.x(now.edgeAftM()) - pen.px(10);
                    boolean fits = ahead - pen.textWidth(words, TextRole.SMALL_BOLD) > pen.px(8);
                    pen.textOn(
                            Token.SHEET,
                            words,
                            fits
                                    ? ahead
                                    : outline.x(now.edgeAftM()
                                                    + now.ribs().get(0).chordM())
                                            + pen.px(10),
                            y,
                            TextRole.SMALL_BOLD,
                            Token.ACCENT,
                            fits ? HPos.RIGHT : HPos.LEFT,
                            VPos.CENTER);
                }
            }
        }
    }
}
