package org.rafterbook.ui.draw;

import javafx.scene.canvas.Canvas;
import org.rafterbook.ui.look.EmRegion;

/** A region painted with a {@link Pen}; it paints itself again when its size, the theme or the text size changes. */
public abstract class Drawing extends EmRegion {

    private final Canvas canvas = new Canvas();
    private double wishedWidthEm = -1;
    private double wishedHeightEm = -1;

    protected Drawing() {
        canvas.setManaged(false);
        canvas.setMouseTransparent(true);
        getChildren().add(canvas);
        getStyleClass().add("drawing");
    }

    /** Paints everything on a clean canvas; called on the JavaFX thread. */
    protected abstract void paint(Pen pen);

    /** Wishes for a size in em; a negative number leaves that side to the layout. */
    public final void wish(double widthEm, double heightEm) {
        wishedWidthEm = widthEm;
        wishedHeightEm = heightEm;
        requestLayout();
    }

    /** Paints again, at once if the drawing is on show. */
    public final void repaint() {
        if (canvas.getWidth() > 0 && canvas.getHeight() > 0) {
            double width = canvas.getWidth();
            double height = canvas.getHeight();
            canvas.getGraphicsContext2D().clearRect(0, 0, width, height);
            paint(new Pen(canvas.getGraphicsContext2D(), width, height, theme().tokens(), em(), fontFamily()));
        }
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(Math.ceil(getWidth()));
        canvas.setHeight(Math.ceil(getHeight()));
        repaint();
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
