package org.rafterbook.ui.draw;

/** The six shapes a version's mark can have; each is given on a square from -1 to 1. */
public enum MarkShape {
    CIRCLE("circle"),
    SQUARE("square", -0.89, -0.89, 0.89, -0.89, 0.89, 0.89, -0.89, 0.89),
    UP_TRIANGLE("up-triangle", 0, -1, 1.05, 0.88, -1.05, 0.88),
    DOWN_TRIANGLE("down-triangle", 0, 1, -1.05, -0.88, 1.05, -0.88),
    DIAMOND("diamond", 0, -1.12, 1.12, 0, 0, 1.12, -1.12, 0),
    PLUS(
            "plus", -0.45, -1, 0.45, -1, 0.45, -0.45, 1, -0.45, 1, 0.45, 0.45, 0.45, 0.45, 1, -0.45, 1, -0.45, 0.45, -1,
            0.45, -1, -0.45, -0.45, -0.45);

    private final String word;
    private final double[] corners;

    MarkShape(String word, double... corners) {
        this.word = word;
        this.corners = corners;
    }

    /** The shape in a word, for accessible text. */
    public String word() {
        return word;
    }

    /** Corner points x, y, x, y ... at the given place and half size; empty for the circle. */
    double[] corners(double x, double y, double half) {
        double[] placed = new double[corners.length];
        for (int i = 0; i < corners.length; i++) {
            placed[i] = (i % 2 == 0 ? x : y) + corners[i] * half;
        }
        return placed;
    }
}
