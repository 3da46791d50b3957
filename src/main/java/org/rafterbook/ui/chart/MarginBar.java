package org.rafterbook.ui.chart;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.QuantityFormat;

/**
 * The stability margin on a rule from -4 to 16 %: hatched where the model is unstable, the wished range soft, the blade
 * now, an open triangle before, and over the blade how well the difference to the named version is known.
 */
public final class MarginBar extends Drawing {

    private static final double LOW = -4;
    private static final double HIGH = 16;
    private static final double BELOW = 38;
    private static final double SIDE = 8;

    /**
     * What the bar shows, all in per cent of the mean chord.
     *
     * @param now the margin, null where it cannot be told
     * @param before the margin before the change, null for none
     * @param plusMinus uncertainty of the difference to the named version, null for none
     * @param wishedLow lower end of the wished range, null for none
     */
    public record Margin(
            @Nullable Double now,
            @Nullable Double before,
            @Nullable Double plusMinus,
            @Nullable Double wishedLow,
            @Nullable Double wishedHigh) {}

    private Margin margin = new Margin(null, null, null, null, null);

    public MarginBar() {
        wish(-1, (30 + BELOW) / TextSize.EM_PX);
        setMinWidth(0);
        setAccessibleRole(AccessibleRole.TEXT);
        show(margin);
    }

    /** Shows this margin. */
    public void show(Margin newMargin) {
        margin = newMargin;
        setAccessibleText(sentence());
        repaint();
    }

    private String sentence() {
        List<String> parts = new ArrayList<>();
        Double now = margin.now();
        parts.add(now == null ? "Stability margin not known" : "Stability margin " + percent(now));
        if (now != null && now < 0) {
            parts.add("unstable");
        }
        Double before = margin.before();
        if (before != null) {
            parts.add("before " + percent(before));
        }
        Double plusMinus = margin.plusMinus();
        if (plusMinus != null) {
            parts.add("± " + percent(plusMinus));
        }
        if (margin.wishedLow() != null && margin.wishedHigh() != null) {
            parts.add(wished());
        }
        return String.join(", ", parts);
    }

    private static String percent(double value) {
        return QuantityFormat.rounded(value, 1) + " %";
    }

    private String wished() {
        return "wished " + whole(margin.wishedLow()) + " to " + whole(margin.wishedHigh());
    }

    private static String whole(@Nullable Double value) {
        double number = value == null ? 0 : value;
        return QuantityFormat.rounded(number, number == Math.rint(number) ? 0 : 1);
    }

    @Override
    protected void paint(Pen pen) {
        double line = pen.height() - pen.px(BELOW);
        Scale x = new Scale(LOW, HIGH, pen.px(SIDE), Math.max(pen.px(SIDE) + 1, pen.width() - pen.px(16)));
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
        layers().forEach(layer -> layer.paint(frame));
        Gauge.scale(
                pen,
                x,
                Graduation.every(4, 4, value -> QuantityFormat.rounded(value, 0) + (value == HIGH ? " %" : "")),
                line);
        pen.stroke(Token.INK, 2).line(x.at(0), line - pen.px(24), x.at(0), line + pen.px(9));
        words(pen, x, line + pen.px(31));
    }

    private List<Layer> layers() {
        List<Layer> layers = new ArrayList<>();
        layers.add(GaugeLayers.beyond(LOW, 0));
        Double low = margin.wishedLow();
        Double high = margin.wishedHigh();
        if (low != null && high != null) {
            layers.add(GaugeLayers.range(low, high, ""));
        }
        Double before = margin.before();
        if (before != null) {
            layers.add(GaugeLayers.before(before));
        }
        Double now = margin.now();
        if (now != null) {
            layers.add(GaugeLayers.blade(now));
            Double plusMinus = margin.plusMinus();
            if (plusMinus != null) {
                layers.add(GaugeLayers.plusMinus(now, plusMinus));
            }
        }
        return layers;
    }

    private void words(Pen pen, Scale x, double y) {
        pen.text("unstable", x.at(LOW), y, TextRole.SMALL, Token.INK_3, HPos.LEFT, VPos.CENTER);
        Double low = margin.wishedLow();
        Double high = margin.wishedHigh();
        double middle = low == null || high == null ? Double.NaN : x.at(x.clamp((low + high) / 2));
        double wishedEnd = low == null || high == null ? 0 : middle + pen.textWidth(wished(), TextRole.SMALL) / 2;
        if (low != null && high != null) {
            pen.text(wished(), middle, y, TextRole.SMALL, Token.ACCENT, HPos.CENTER, VPos.CENTER);
        }
        double stiffStart = x.highPx() - pen.textWidth("stiff, draggy", TextRole.SMALL);
        if (wishedEnd + pen.px(8) < stiffStart) {
            pen.text("stiff, draggy", x.highPx(), y, TextRole.SMALL, Token.INK_3, HPos.RIGHT, VPos.CENTER);
        }
    }
}
