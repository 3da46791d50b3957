package org.rafterbook.ui.bench;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;
import org.rafterbook.ui.chart.Scale;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;
import org.rafterbook.work.MarginAnswer;

/** The airframe to scale on graph paper, nose left: from above over the side view. */
final class AirframeDrawing extends Drawing {

    /** What is drawn: the airframe, as a ghost how it was, its margin, and which margin is wished for. */
    record Subject(
            @Nullable Airframe airframe,
            @Nullable Airframe ghost,
            @Nullable MarginAnswer margin,
            @Nullable Double wishedLow,
            @Nullable Double wishedHigh) {

        static final Subject NOTHING = new Subject(null, null, null, null, null);
    }

    private static final double NEAR_PX = 12;

    private Subject subject = Subject.NOTHING;
    private boolean dimensions = true;
    private @Nullable AirframeFit fit;
    private Scale x = new Scale(0, 1, 0, 1);

    AirframeDrawing() {
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText("The airframe from above and from the left side, to scale");
        setMinSize(0, 0);
    }

    void show(Subject newSubject) {
        subject = newSubject;
        repaint();
    }

    /** Lays the drawing on the rule's scale. */
    void lay(@Nullable AirframeFit newFit, Scale scale) {
        fit = newFit;
        x = scale;
        repaint();
    }

    void dimensions(boolean shown) {
        dimensions = shown;
        repaint();
    }

    boolean dimensions() {
        return dimensions;
    }

    Subject subject() {
        return subject;
    }

    @Override
    protected void paint(Pen pen) {
        pen.area(0, 0, pen.width(), pen.height(), Token.SHEET);
        AirframeFit laid = fit;
        if (laid == null) {
            return;
        }
        paper(pen, laid);
        Airframe airframe = subject.airframe();
        if (airframe == null || airframe.surfaces().isEmpty()) {
            return;
        }
        Labels labels = new Labels();
        MarginAnswer margin = subject.margin();
        PointsView points = margin == null ? null : new PointsView(pen, x, laid, margin);
        if (points != null) {
            points.keepPlaces(labels);
        }
        AboveView above = new AboveView(pen, new Outline(x, laid.middlePx()), laid, labels);
        SideView side = new SideView(pen, x, laid, labels);
        Airframe ghost = subject.ghost();
        above.paint(airframe);
        side.paint(airframe);
        if (ghost != null) {
            above.ghost(ghost);
            side.ghost(ghost, airframe);
            above.change(airframe, ghost);
        }
        if (dimensions && laid.isRoomy(pen.px(1))) {
            above.dimensions(airframe);
            side.dimensions(airframe);
        }
        if (points != null) {
            points.paint(subject.wishedLow(), subject.wishedHigh());
        }
        caption(pen, "From above", pen.px(14));
        caption(pen, "From the left side", laid.sideTopPx() + pen.px(12));
        if (margin != null) {
            inset(pen, margin, airframe);
        }
    }

    private static void caption(Pen pen, String text, double y) {
        pen.textOn(Token.SHEET, text, pen.px(13), y, TextRole.CAPTION, Token.INK, HPos.LEFT, VPos.CENTER);
    }

    /** The two points along the mean chord, where they lie too near each other on the drawing. */
    private void inset(Pen pen, MarginAnswer margin, Airframe airframe) {
        Double balance = margin.balanceM();
        Double neutral = margin.neutralPointM();
        WingGeometry wings = WingGeometry.of(airframe);
        if (balance != null && neutral != null && wings.meanChordM() > 0) {
            double apart = Math.abs(neutral - balance) * 1000 * x.pxPerUnit();
            if (apart < pen.px(NEAR_PX)) {
                double edge = wings.meanChordEdgeM();
                double chord = wings.meanChordM() / 100;
                Double band = margin.band();
                ChordInset.paint(
                        pen, (balance - edge) / chord, (neutral - edge) / chord, band == null ? 0 : band * 100);
            }
        }
    }

    /** Grid of 10 mm, heavier each 50 mm, from the stick and the centre line outward. */
    private void paper(Pen pen, AirframeFit laid) {
        double step = 10 * x.pxPerUnit();
        if (step < 3) {
            return;
        }
        double start = 10 * Math.ceil(x.value(0) / 10);
        for (double mm = start; x.at(mm) < pen.width(); mm += 10) {
            pen.stroke(Math.round(mm) % 50 == 0 ? Token.GRID_5 : Token.GRID, 1);
            pen.line(x.at(mm), 0, x.at(mm), pen.height());
        }
        int first = (int) Math.ceil(-laid.middlePx() / step);
        for (int k = first; laid.middlePx() + k * step < pen.height(); k++) {
            pen.stroke(k % 5 == 0 ? Token.GRID_5 : Token.GRID, 1);
            pen.line(0, laid.middlePx() + k * step, pen.width(), laid.middlePx() + k * step);
        }
    }

    /** A surface under the pointer. */
    record Hit(Surface surface, boolean fromSide) {}

    /** What lies at a point of the drawing, null for nothing. */
    @Nullable
    Hit at(double px, double py) {
        AirframeFit laid = fit;
        Airframe airframe = subject.airframe();
        if (laid == null || airframe == null) {
            return null;
        }
        if (py > laid.sideTopPx()) {
            Surface seen = sectionAt(airframe, laid, px, py);
            return seen == null ? null : new Hit(seen, true);
        }
        Surface found = null;
        for (Surface s : airframe.surfaces()) {
            // of two that lie over each other the upper one is seen
            boolean seen = s.role() != Role.FIN && covers(s, laid, px, py);
            if (seen && (found == null || s.riseM() >= found.riseM())) {
                found = s;
            }
        }
        return found == null ? null : new Hit(found, false);
    }

    private @Nullable Surface sectionAt(Airframe airframe, AirframeFit laid, double px, double py) {
        Surface found = null;
        for (Surface s : airframe.surfaces()) {
            double from = x.at(s.edgeAftM() * 1000) - 6;
            double to = x.at((s.edgeAftM() + s.ribs().get(0).chordM()) * 1000) + 6;
            double y = laid.stickPx() - s.riseM() * 1000 * laid.pxPerMm();
            if (s.role() != Role.FIN && px >= from && px <= to && Math.abs(py - y) < 14) {
                found = s;
            }
        }
        return found;
    }

    private boolean covers(Surface s, AirframeFit laid, double px, double py) {
        double mm = x.value(px);
        double out = Math.abs((py - laid.middlePx()) / laid.pxPerMm());
        Rib before = s.ribs().get(0);
        for (Rib rib : s.ribs()) {
            double edge = 1000 * (s.edgeAftM() + Math.min(before.edgeAftM(), rib.edgeAftM()));
            double back = 1000
                    * (s.edgeAftM() + Math.max(before.edgeAftM() + before.chordM(), rib.edgeAftM() + rib.chordM()));
            if (out >= before.outM() * 1000 && out <= rib.outM() * 1000 && mm >= edge && mm <= back) {
                return true;
            }
            before = rib;
        }
        return false;
    }

    /** The value on the rule at a pixel, mm. */
    double mmAt(double px) {
        return x.value(px);
    }

    /** Pixels of one millimetre. */
    double pxPerMm() {
        return x.pxPerUnit();
    }
}
