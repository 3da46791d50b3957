package org.rafterbook.ui.chart;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Token;

/**
 * A level line with graduations hanging down, on which something is read: the time in the air, the turns left. Layers
 * stand on the line; {@link GaugeLayers} has the usual ones.
 */
public final class Gauge extends Drawing {

    private static final double ABOVE = 36;
    private static final double BELOW = 42;
    private static final double SIDE = 8;

    private final Graduation graduation;
    private double low;
    private double high = 1;
    private String unit = "";
    private List<Layer> layers = List.of();

    public Gauge(Graduation graduation) {
        this.graduation = graduation;
        wish(-1, (ABOVE + BELOW) / TextSize.EM_PX);
        setMinWidth(0);
        setAccessibleRole(AccessibleRole.TEXT);
    }

    /** The unit under the right end. */
    public Gauge unit(String text) {
        unit = text;
        return this;
    }

    /** Shows the gauge between two values with these layers; the sentence is read out. */
    public void show(double newLow, double newHigh, List<Layer> newLayers, String sentence) {
        low = newLow;
        high = newHigh;
        layers = List.copyOf(newLayers);
        setAccessibleText(sentence);
        repaint();
    }

    @Override
    protected void paint(Pen pen) {
        double line = pen.height() - pen.px(BELOW);
        Scale x = new Scale(low, high, pen.px(SIDE), Math.max(pen.px(SIDE) + 1, pen.width() - pen.px(SIDE)));
        Frame frame = new Frame(
                pen,
                x,
                new Scale(0, 1, line, 0),
                x.lowPx(),
                0,
                x.highPx(),
                line,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY);
        layers.forEach(layer -> layer.paint(frame));
        scale(pen, x, graduation, line);
        pen.text(unit, x.highPx(), line + pen.px(38), TextRole.MICRO, Token.INK_3, HPos.RIGHT, VPos.CENTER);
    }

    /** A level line with graduations hanging down from it and their labels. */
    static void scale(Pen pen, Scale x, Graduation graduation, double line) {
        pen.stroke(Token.EDGE, 1).line(x.lowPx(), line, x.highPx(), line);
        for (Tick tick : graduation.ticks(x.low(), x.high(), x.pxPerUnit() * TextSize.EM_PX / pen.em())) {
            double at = x.at(tick.value());
            double length = switch (tick.level()) {
                case ONE -> 4;
                case FIVE -> 6;
                case TEN -> 9;
            };
            pen.stroke(Token.EDGE, 1).line(at, line, at, line + pen.px(length));
            pen.text(tick.label(), at, line + pen.px(18), TextRole.MICRO, Token.INK_2, HPos.CENTER, VPos.CENTER);
        }
    }
}
