package org.rafterbook.ui.chart;

/** Maps values to pixels along one direction, linearly; {@code highPx} lies above {@code lowPx} for upright axes. */
public record Scale(double low, double high, double lowPx, double highPx) {

    /** The pixel of a value. */
    public double at(double value) {
        return lowPx + (value - low) / (high - low) * (highPx - lowPx);
    }

    /** The value at a pixel. */
    public double value(double px) {
        return low + (px - lowPx) / (highPx - lowPx) * (high - low);
    }

    /** Pixels of one unit of the value, without sign. */
    public double pxPerUnit() {
        return Math.abs((highPx - lowPx) / (high - low));
    }

    /** Whether the value lies within the ends. */
    public boolean holds(double value) {
        return value >= low && value <= high;
    }

    /** The value, or the end it lies beyond. */
    public double clamp(double value) {
        return Math.max(low, Math.min(high, value));
    }
}
