package org.rafterbook.ui.chart;

/** Something painted on a chart or rule; {@link Layers} has the usual ones. */
@FunctionalInterface
public interface Layer {

    /** Paints itself; called on the JavaFX thread. */
    void paint(Frame frame);
}
