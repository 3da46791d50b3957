package org.rafterbook.stability;

/**
 * Finer bound vortices for control points that lie close above or below another surface.
 *
 * <p>A row of single vortices acts on a point at a height of a panel's length or more as the even sheet does that it stands
 * for; nearer, the flow depends on where between two of them the point happens to lie, by exp(-2 pi height/length). Each
 * panel's vortex is therefore spread over an odd number of narrower ones about it.
 */
final class NearVortex {

    /** Heights over a panel's length up to which, and from which on no longer, vortices are spread. */
    private static final double NEAR = 0.9;

    private static final double FAR = 1.5;

    /** Narrow vortices over the height at most. */
    private static final double NARROW = 1;

    private static final int MOST = 25;

    private final Panels panels;
    private final double[][] matrix;
    private final int line;
    private final PanelLine of;
    private final Horseshoes row;

    private NearVortex(Panels panels, double[][] matrix, int line) {
        this.panels = panels;
        this.matrix = matrix;
        this.line = line;
        of = panels.lines().get(line);
        row = new Horseshoes(of.strips() + 1);
    }

    /** Adds the difference that narrower vortices make to the influence of each surface on those close above or below. */
    static void refine(Panels panels, double[][] matrix) {
        for (int line = 0; line < panels.lines().size(); line++) {
            NearVortex near = new NearVortex(panels, matrix, line);
            for (int i = 0; i < panels.size(); i++) {
                near.point(i);
            }
        }
    }

    private void point(int i) {
        Strip own = panels.strips().get(panels.strip[i]);
        int within = own.grid() - of.first();
        if (own.surface() == of.line().surface() || within < 0 || within >= of.strips()) {
            return;
        }
        Strip other = panels.strips().get(panels.firstStrip(line) + within);
        double length = other.middleChord() / panels.chordwise();
        double height = Math.abs(panels.controlZ[i] - other.middleZ());
        double weight = overlap(own, other) > 0 && height > 0 ? NearWake.fade(height / length, NEAR, FAR) : 0;
        if (weight > 0) {
            int spread = 2 * (int) Math.ceil(length / height / NARROW / 2) + 1;
            add(i, Math.min(MOST, spread), weight / (4 * Math.PI));
        }
    }

    private static double overlap(Strip a, Strip b) {
        return Math.min(a.middleEdge() + a.middleChord(), b.middleEdge() + b.middleChord())
                - Math.max(a.middleEdge(), b.middleEdge());
    }

    private void add(int i, int spread, double weight) {
        for (int k = 0; k < panels.chordwise(); k++) {
            row.clear();
            for (int j = 0; j < spread; j++) {
                double along = (k + 0.25 + (j - (spread - 1) / 2) / (double) spread) / panels.chordwise();
                row.place(of, along);
                double share = j == (spread - 1) / 2 ? 1.0 / spread - 1 : 1.0 / spread;
                row.add(
                        panels.controlX[i],
                        panels.controlY[i],
                        panels.controlZ[i],
                        panels.normalY[i],
                        panels.normalZ[i],
                        share);
                if (panels.mirrored()) {
                    row.add(
                            panels.controlX[i],
                            -panels.controlY[i],
                            panels.controlZ[i],
                            -panels.normalY[i],
                            panels.normalZ[i],
                            share);
                }
            }
            for (int s = 0; s < of.strips(); s++) {
                matrix[i][panels.panel(line, k, s)] += weight * row.flow(s);
            }
        }
    }
}
