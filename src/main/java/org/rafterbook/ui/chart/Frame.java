package org.rafterbook.ui.chart;

import org.rafterbook.ui.draw.Pen;

/**
 * What a layer paints into: the pen, the scales, the plot and the range of x that was flown.
 *
 * @param left pixel of the plot's left edge; likewise the others
 * @param flownLow lowest x that was flown; nothing estimated is drawn below it
 */
public record Frame(
        Pen pen,
        Scale x,
        Scale y,
        double left,
        double top,
        double right,
        double bottom,
        double flownLow,
        double flownHigh) {

    /** Pixel of a value of x. */
    public double px(double value) {
        return x.at(value);
    }

    /** Pixel of a value of y. */
    public double py(double value) {
        return y.at(value);
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }
}
