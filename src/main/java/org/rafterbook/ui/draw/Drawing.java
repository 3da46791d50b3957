package org.rafterbook.ui.draw;

import java.util.function.Consumer;
import javafx.scene.canvas.Canvas;
import org.rafterbook.ui.look.EmRegion;

/** A region painted with a {@link Pen}; it paints itself again when its size, the theme or the text size changes. */
public abstract class Drawing extends EmRegion {

    private final Canvas canvas = new Canvas();
    private final Canvas over = new Canvas();
    private double wishedWidthEm = -1;
    private double wishedHeightEm = -1;

    protected Drawing() {
        prepare(canvas);
        getStyleClass().add("drawing");
    }

    private void prepare(Canvas layer) {
        layer.setManaged(false);
        layer.setMouseTransparent(true);
        getChildren().add(layer);
    }

    /** Paints everything on a clean canvas; called on the JavaFX thread. */
    protected abstract void paint(Pen pen);

    /** Paints what lies over the rest and changes more often, such as what is pointed at; on a canvas of its own. */
    protected void paintOver(Pen pen) {}

    /** Has a canvas of its own for what lies over the rest. */
    protected final void layered() {
        prepare(over);
    }

    /** Wishes for a size in em; a negative number leaves that side to the layout. */
    public final void wish(double widthEm, double heightEm) {
        wishedWidthEm = widthEm;
        wishedHeightEm = heightEm;
        requestLayout();
    }

    /** Paints again, at once if the drawing is on show. */
    public final void repaint() {
        paint(canvas, this::paint);
        repaintOver();
    }

    /** Paints only what lies over the rest again. */
    protected final void repaintOver() {
        if (over.getParent() != null) {
            paint(over, this::paintOver);
        }
    }

    private void paint(Canvas layer, Consumer<Pen> painter) {
        double width = layer.getWidth();
        double height = layer.getHeight();
        if (width > 0 && height > 0) {
            layer.getGraphicsContext2D().clearRect(0, 0, width, height);
            painter.accept(new Pen(layer.getGraphicsContext2D(), width, height, theme().tokens(), em(), fontFamily()));
        }
    }

    @Override
    protected void layoutChildren() {
        fit(canvas);
        fit(over);
        repaint();
    }

    private void fit(Canvas layer) {
        if (layer.getParent() != null) {
            layer.setWidth(Math.ceil(getWidth()));
            layer.setHeight(Math.ceil(getHeight()));
        }
    }

    @Override
    protected double computePrefWidth(double height) {
        return wishedWidthEm < 0 ? 0 : wishedWidthEm * em();
    }

    @Override
    protected double computePrefHeight(double width) {
        return wishedHeightEm < 0 ? 0 : wishedHeightEm * em();
    }

    @Override
    protected double computeMinWidth(double height) {
        return computePrefWidth(height);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computeMaxWidth(double height) {
        return wishedWidthEm < 0 ? Double.MAX_VALUE : computePrefWidth(height);
    }

    @Override
    protected double computeMaxHeight(double width) {
        return wishedHeightEm < 0 ? Double.MAX_VALUE : computePrefHeight(width);
    }
}
