package org.rafterbook.ui.chart;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Token;

/**
 * The graduated steel rule along the top of a place. Its measuring edge is the lower one; what lies below can share its
 * {@link #scaleProperty() scale}.
 *
 * <pre>
 * Rule rule = new Rule("The clock of the evening", Graduation.clock(zone));
 * rule.show(from, to, List.of(RuleLayers.flight(start, end, mark, false), RuleLayers.now(now, "now")));
 * </pre>
 */
public final class Rule extends Drawing {

    private static final double HEIGHT_EM = 46 / 12.5;
    private static final double SIDE = 26;
    private static final double UNIT_SIDE = 60;
    static final double LABEL_Y = 27;

    private final Graduation graduation;
    private final ReadOnlyObjectWrapper<Scale> scale =
            new ReadOnlyObjectWrapper<>(this, "scale", new Scale(0, 1, 0, 1));
    private double low;
    private double high = 1;
    private double leftSide = SIDE;
    private double rightSide = SIDE;
    private String unit = "";
    private String remark = "";
    private boolean beside;
    private boolean unitFirst;
    private List<Layer> layers = List.of();

    /**
     * @param says what the rule measures, for accessible text
     */
    public Rule(String says, Graduation graduation) {
        this.graduation = graduation;
        wish(-1, HEIGHT_EM);
        setMinWidth(0);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(says);
    }

    /** The unit behind the last graduation. */
    public Rule unit(String text) {
        unit = text;
        return this;
    }

    /** The unit before the first graduation instead. */
    public Rule unitFirst(String text) {
        unit = text;
        unitFirst = true;
        return this;
    }

    /** A quiet remark at the upper left, such as what an empty rule will measure. */
    public Rule remark(String text) {
        remark = text;
        repaint();
        return this;
    }

    /** Labels stand beside their graduation, as months do, not over it. */
    public Rule labelsBeside() {
        beside = true;
        return this;
    }

    /** Room at the left before the first graduation, in pixels of the design. */
    public Rule leftSide(double design) {
        leftSide = design;
        return this;
    }

    /** Room at the right behind the last graduation, in pixels of the design, so that a chart below can share the scale. */
    public Rule rightSide(double design) {
        rightSide = design;
        return this;
    }

    /** Shows the rule between two values with these layers over it. */
    public void show(double newLow, double newHigh, List<Layer> newLayers) {
        low = newLow;
        high = newHigh;
        layers = List.copyOf(newLayers);
        if (getWidth() > 0) {
            rescale(getWidth(), em() / TextSize.EM_PX);
            repaint();
        }
    }

    /** Only changes the layers, as the clock goes on. */
    public void layers(List<Layer> newLayers) {
        layers = List.copyOf(newLayers);
        repaint();
    }

    /** Where values lie, in pixels from the rule's left. */
    public ReadOnlyObjectProperty<Scale> scaleProperty() {
        return scale.getReadOnlyProperty();
    }

    private void rescale(double width, double size) {
        double right = (unit.isEmpty() || unitFirst ? rightSide : UNIT_SIDE) * size;
        scale.set(new Scale(low, high, leftSide * size, Math.max(leftSide * size + 1, width - right)));
    }

    @Override
    protected void layoutChildren() {
        rescale(getWidth(), em() / TextSize.EM_PX);
        super.layoutChildren();
    }

    @Override
    protected void paint(Pen pen) {
        Scale x = scale.get();
        double foot = pen.height() - 1;
        pen.area(0, 0, pen.width(), pen.height(), Token.RAISED);
        Frame frame = new Frame(
                pen,
                x,
                new Scale(0, 1, foot, 0),
                0,
                0,
                pen.width(),
                foot,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY);
        layers.stream().filter(RuleLayers.Ground.class::isInstance).forEach(layer -> layer.paint(frame));
        graduations(pen, x, foot);
        pen.stroke(Token.EDGE, 1).line(0, foot, pen.width(), foot);
        pen.text(remark, x.lowPx(), pen.px(9), TextRole.SMALL, Token.INK_3, HPos.LEFT, VPos.CENTER);
        layers.stream().filter(layer -> !(layer instanceof RuleLayers.Ground)).forEach(layer -> layer.paint(frame));
    }

    private void graduations(Pen pen, Scale x, double foot) {
        double labelAt = pen.px(LABEL_Y);
        double right = 0;
        for (Tick tick : graduation.ticks(low, high, x.pxPerUnit() * TextSize.EM_PX / pen.em())) {
            double at = x.at(tick.value());
            double length = switch (tick.level()) {
                case ONE -> 5;
                case FIVE -> 8;
                case TEN -> beside ? 18 : 11;
            };
            pen.stroke(tick.level() == Tick.Level.TEN ? Token.INK_2 : Token.EDGE, 1)
                    .line(at, foot - pen.px(length), at, foot);
            if (!tick.label().isEmpty()) {
                pen.text(
                        tick.label(),
                        beside ? at + pen.px(4) : at,
                        labelAt,
                        TextRole.MICRO,
                        Token.INK_2,
                        beside ? HPos.LEFT : HPos.CENTER,
                        VPos.CENTER);
                right = at + pen.textWidth(tick.label(), TextRole.MICRO) / 2;
            }
        }
        double unitAt = unitFirst ? pen.px(12) : right + pen.px(10);
        pen.text(unit, unitAt, labelAt, TextRole.MICRO, Token.INK_3, HPos.LEFT, VPos.CENTER);
    }
}
