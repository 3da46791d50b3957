package org.rafterbook.review;

/**
 * From here to there.
 *
 * @param low lower end
 * @param high upper end, not below {@code low}
 */
public record Span(double low, double high) {

    public Span {
        if (!(low <= high)) {
            throw new IllegalArgumentException(low + " to " + high);
        }
    }

    public double width() {
        return high - low;
    }

    public boolean holds(double x) {
        return low <= x && x <= high;
    }
}
