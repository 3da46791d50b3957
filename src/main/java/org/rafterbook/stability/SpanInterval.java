package org.rafterbook.stability;

import java.util.Arrays;

/**
 * One stretch of the span between two places where surfaces end, cut into panels that are even in an angle: for one
 * surface alone the cosine rule. The angle grows as 1/sqrt(s^2 - y^2) for each surface of half span s, whichever asks for
 * the densest panels, so that they draw together towards every tip, from beyond as from within.
 */
final class SpanInterval {

    private static final int PIECES = 256;

    private final double fromM;
    private final double toM;
    private final double[] angle = new double[PIECES + 1];
    private final int panels;

    /**
     * @param step the angle that one panel may span at most
     */
    SpanInterval(double fromM, double toM, SpanDensity density, double step, int leastPanels) {
        this.fromM = fromM;
        this.toM = toM;
        double half = (toM - fromM) / 2;
        for (int i = 0; i < PIECES; i++) {
            double phi = Math.PI * (i + 0.5) / PIECES;
            double y = (fromM + toM) / 2 - half * Math.cos(phi);
            angle[i + 1] = angle[i] + density.at(y) * half * Math.sin(phi) * Math.PI / PIECES;
        }
        panels = Math.max(leastPanels, (int) Math.ceil(angle[PIECES] / step - 1e-6));
    }

    int panels() {
        return panels;
    }

    /** Place across of a count of panels from the start, whole for an edge, a half more for a control point. */
    double place(double count) {
        if (count <= 0) {
            return fromM;
        }
        if (count >= panels) {
            return toM;
        }
        double wanted = angle[PIECES] * count / panels;
        int at = Arrays.binarySearch(angle, wanted);
        double index = at;
        if (at < 0) {
            int k = Math.max(1, Math.min(PIECES, -at - 1));
            index = k - 1 + (wanted - angle[k - 1]) / (angle[k] - angle[k - 1]);
        }
        return (fromM + toM) / 2 - (toM - fromM) / 2 * Math.cos(Math.PI / PIECES * index);
    }
}
