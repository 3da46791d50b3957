package org.rafterbook.ui.draw;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Token;
import org.rafterbook.ui.look.Tokens;

/**
 * The one way to draw on a canvas: lines, areas, hatching, text and marks in the theme's colours. Coordinates are pixels
 * of the canvas; {@link #px} turns a length of the design at 100 % into pixels here. Thin upright and level lines are
 * laid on whole pixels.
 */
public final class Pen {

    /** A text in its font: what a width belongs to. */
    private record Written(String text, Font font) {}

    private static final int WIDTHS_KEPT = 2000;

    /** Widths measured last: the same words are measured at each painting, and measuring is slow. */
    private static final Map<Written, Double> WIDTHS =
            Collections.synchronizedMap(new LinkedHashMap<>(WIDTHS_KEPT, 0.75f, true) {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<Written, Double> eldest) {
                    return size() > WIDTHS_KEPT;
                }
            });

    private final GraphicsContext g;
    private final double width;
    private final double height;
    private final Tokens tokens;
    private final double em;
    private final String family;

    Pen(GraphicsContext g, double width, double height, Tokens tokens, double em, String family) {
        this.g = g;
        this.width = width;
        this.height = height;
        this.tokens = tokens;
        this.em = em;
        this.family = family;
        g.setLineCap(StrokeLineCap.BUTT);
        g.setLineJoin(StrokeLineJoin.MITER);
        g.setLineDashes();
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    public double em() {
        return em;
    }

    /** The canvas itself, for shapes the pen does not know. */
    public GraphicsContext canvas() {
        return g;
    }

    public Color colour(Token token) {
        return tokens.of(token);
    }

    /** The colour let through to the given share, 0 to 1. */
    public Color colour(Token token, double opacity) {
        Color colour = tokens.of(token);
        return Color.color(colour.getRed(), colour.getGreen(), colour.getBlue(), opacity);
    }

    /** Pixels here for a length of the design, which is drawn for 1 em = 12.5 px. */
    public double px(double design) {
        return design * em / TextSize.EM_PX;
    }

    /** Sets the stroke for what follows; the width is one of the design. */
    public Pen stroke(Token token, double designWidth) {
        g.setStroke(tokens.of(token));
        g.setLineWidth(Math.max(1, px(designWidth)));
        g.setLineDashes();
        return this;
    }

    /** Makes the stroke dashed; on and off lengths are ones of the design. */
    public Pen dashed(double... designLengths) {
        double[] dashes = new double[designLengths.length];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = px(designLengths[i]);
        }
        g.setLineDashes(dashes);
        return this;
    }

    /** A line with the stroke last set. */
    public Pen line(double x1, double y1, double x2, double y2) {
        if (x1 == x2) {
            double x = crisp(x1);
            g.strokeLine(x, y1, x, y2);
        } else if (y1 == y2) {
            double y = crisp(y1);
            g.strokeLine(x1, y, x2, y);
        } else {
            g.strokeLine(x1, y1, x2, y2);
        }
        return this;
    }

    /** A line through the points with the stroke last set. */
    public Pen path(double[] xs, double[] ys, int count) {
        g.strokePolyline(xs, ys, count);
        return this;
    }

    private double crisp(double at) {
        // an odd line width lies on the middle of a pixel, an even one between two
        return Math.round(g.getLineWidth()) % 2 == 1 ? Math.floor(at) + 0.5 : Math.round(at);
    }

    /** Fills an area. */
    public Pen area(double x, double y, double w, double h, Color colour) {
        if (w > 0 && h > 0) {
            g.setFill(colour);
            g.fillRect(x, y, w, h);
        }
        return this;
    }

    public Pen area(double x, double y, double w, double h, Token token) {
        return area(x, y, w, h, tokens.of(token));
    }

    /** Slanting lines over an area: what lies there is out of bounds. */
    public Pen hatch(double x, double y, double w, double h, Token token) {
        return hatch(x, y, w, h, tokens.of(token));
    }

    public Pen hatch(double x, double y, double w, double h, Color colour) {
        if (w <= 0 || h <= 0) {
            return this;
        }
        g.save();
        g.beginPath();
        g.rect(x, y, w, h);
        g.clip();
        g.setStroke(colour);
        g.setLineWidth(Math.max(1, px(1)));
        g.setLineDashes();
        double step = px(6);
        for (double at = x - h; at < x + w; at += step) {
            g.strokeLine(at, y + h, at + h, y);
        }
        g.restore();
        return this;
    }

    /** A filled triangle, square or any other closed shape. */
    public Pen shape(Token token, double... xy) {
        g.setFill(tokens.of(token));
        g.fillPolygon(every(xy, 0), every(xy, 1), xy.length / 2);
        return this;
    }

    /** The outline of a closed shape with the stroke last set. */
    public Pen outline(double... xy) {
        g.strokePolygon(every(xy, 0), every(xy, 1), xy.length / 2);
        return this;
    }

    private static double[] every(double[] xy, int from) {
        double[] picked = new double[xy.length / 2];
        for (int i = 0; i < picked.length; i++) {
            picked[i] = xy[2 * i + from];
        }
        return picked;
    }

    /** Writes text whose given edge lies at the point. */
    public Pen text(String text, double x, double y, TextRole role, Token token, HPos across, VPos up) {
        g.setFont(font(role));
        g.setFill(tokens.of(token));
        g.setTextAlign(
                switch (across) {
                    case LEFT -> TextAlignment.LEFT;
                    case CENTER -> TextAlignment.CENTER;
                    case RIGHT -> TextAlignment.RIGHT;
                });
        g.setTextBaseline(up);
        g.fillText(text, x, y);
        return this;
    }

    /** Writes text on a patch of ground, so that lines behind it do not run through it. */
    public Pen textOn(Token ground, String text, double x, double y, TextRole role, Token token, HPos across, VPos up) {
        double w = textWidth(text, role) + px(6);
        double h = role.sizeEm() * em * 1.3;
        double left = switch (across) {
            case LEFT -> x - px(3);
            case CENTER -> x - w / 2;
            case RIGHT -> x - w + px(3);
        };
        double top = switch (up) {
            case TOP -> y;
            case CENTER -> y - h / 2;
            case BASELINE -> y - h * 0.78;
            case BOTTOM -> y - h;
        };
        area(left, top, w, h, colour(ground, 0.85));
        return text(text, x, y, role, token, across, up);
    }

    /** Pixels the text will be wide. */
    public double textWidth(String text, TextRole role) {
        Font font = font(role);
        return WIDTHS.computeIfAbsent(new Written(text, font), written -> {
            Text measure = new Text(text);
            measure.setFont(font);
            return measure.getLayoutBounds().getWidth();
        });
    }

    public Font font(TextRole role) {
        return role.font(family, em);
    }

    /** A version's mark centred on the point; {@code size} is one of the design (8 to 9 for a flight). */
    public Pen mark(VersionMark mark, MarkStyle style, double x, double y, double size) {
        Marks.paint(this, mark.shape(), mark.token(), style, x, y, px(size));
        return this;
    }

    /** A mark of any shape and colour centred on the point. */
    public Pen mark(MarkShape shape, Token token, MarkStyle style, double x, double y, double size) {
        Marks.paint(this, shape, token, style, x, y, px(size));
        return this;
    }
}
