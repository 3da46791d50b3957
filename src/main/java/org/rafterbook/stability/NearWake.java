package org.rafterbook.stability;

import org.rafterbook.airframe.HalfLine;

/**
 * Finer wake legs for control points that lie close above or below another surface's wake.
 *
 * <p>A row of single legs gives the flow at the middle between two of them exactly in the wake's own plane and far from it,
 * but not at heights of a fraction of a panel's width: there the flow along the sheet grows only slowly to its full jump.
 * Each strip's legs are therefore spread over nine narrower strips, the circulation between strips following a parabola.
 */
final class NearWake {

    /** Odd, so that a control point stays in the middle of a narrow strip. */
    private static final int NARROW = 9;

    /** Heights over a strip's width up to which, and from which on no longer, legs are spread. */
    private static final double NEAR = 1;

    private static final double FAR = 2;

    /**
     * Relative slopes from which the spreading fades out: where a wake crosses a surface steeply the height changes within
     * the strip and the single legs average better.
     */
    private static final double FLAT = 0.12;

    private static final double STEEP = 0.24;

    /** Pieces whose ends agree within this are one wing. */
    private static final double SAME_M = 1e-9;

    private final Panels panels;
    private final double[][] matrix;
    private final int line;
    private final int first;
    private final int count;
    private final double[] y;
    private final double[] z;
    private final double[] edge;
    private final double[] chord;
    private final double[] flow;

    /** The pieces that go on where this one ends, -1 for none. */
    private final int lineBefore;

    private final int lineAfter;

    private NearWake(Panels panels, double[][] matrix, int line) {
        this.panels = panels;
        this.matrix = matrix;
        this.line = line;
        first = panels.firstStrip(line);
        count = panels.firstStrip(line + 1) - first;
        PanelLine of = panels.lines().get(line);
        int places = count * NARROW + 1;
        y = new double[places];
        z = new double[places];
        edge = new double[places];
        chord = new double[places];
        flow = new double[places];
        lineBefore = touching(line, of.line().fromM(), false);
        lineAfter = touching(line, of.line().toM(), true);
        for (int e = 0; e < places; e++) {
            int strip = Math.min(e / NARROW, count - 1);
            Strip s = panels.strips().get(first + strip);
            y[e] = panels.grid().within(s.grid(), (e - strip * NARROW) / (double) NARROW);
            double share = (y[e] - s.y1()) / s.width();
            z[e] = mix(of.heightM(strip), of.heightM(strip + 1), share);
            edge[e] = mix(of.edgeAftM(strip), of.edgeAftM(strip + 1), share);
            chord[e] = mix(of.chordM(strip), of.chordM(strip + 1), share);
        }
    }

    private static double mix(double a, double b, double share) {
        return a + (b - a) * share;
    }

    /** The piece that begins (or ends) at a place just as this one ends (or begins) there. */
    private int touching(int line, double yM, boolean beyond) {
        HalfLine.Station here = panels.lines().get(line).line().at(yM);
        for (int l = 0; l < panels.lines().size(); l++) {
            SpanLine other = panels.lines().get(l).line();
            double end = beyond ? other.fromM() : other.toM();
            HalfLine.Station there = other.at(end);
            boolean same = Math.abs(end - yM) < SAME_M
                    && Math.abs(there.edgeAftM() - here.edgeAftM()) < SAME_M
                    && Math.abs(there.chordM() - here.chordM()) < SAME_M
                    && Math.abs(there.heightM() - here.heightM()) < SAME_M;
            if (l != line && same) {
                return l;
            }
        }
        return -1;
    }

    /** Adds the difference that narrower legs make to the influence of each surface on the others behind it. */
    static void refine(Panels panels, double[][] matrix) {
        for (int line = 0; line < panels.lines().size(); line++) {
            NearWake wake = null;
            for (int i = 0; i < panels.size(); i++) {
                double weight = weight(panels, line, i);
                if (weight > 0) {
                    wake = wake == null ? new NearWake(panels, matrix, line) : wake;
                    wake.add(i, weight);
                }
            }
        }
    }

    private static double weight(Panels panels, int line, int i) {
        int source = panels.lines().get(line).line().surface();
        int first = panels.firstStrip(line);
        Strip own = panels.strips().get(panels.strip[i]);
        int within = own.grid() - panels.strips().get(first).grid();
        if (source == own.surface() || within < 0 || within >= panels.firstStrip(line + 1) - first) {
            return 0;
        }
        Strip wake = panels.strips().get(first + within);
        double behind = (panels.controlX[i] - wake.trailingX()) / wake.slant();
        double height = Math.abs(panels.controlZ[i] - wake.middleZ()) * wake.width() / wake.slant() / wake.slant();
        double slope = Math.abs(wake.slope() - own.slope());
        return (1 - fade(behind, NEAR, FAR)) * fade(height, NEAR, FAR) * fade(slope, FLAT, STEEP);
    }

    /** One up to the first value, zero from the second on, smooth between. */
    static double fade(double value, double full, double none) {
        double t = Math.max(0, Math.min(1, (none - value) / (none - full)));
        return t * t * (3 - 2 * t);
    }

    private void add(int i, double weight) {
        for (int k = 0; k < panels.chordwise(); k++) {
            spread(i, k, 1, weight / (4 * Math.PI));
            if (panels.mirrored()) {
                spread(i, k, -1, weight / (4 * Math.PI));
            }
        }
    }

    private void spread(int i, int k, int side, double weight) {
        for (int e = 0; e < y.length; e++) {
            flow[e] = leg(i, side, edge[e] + chord[e] * (k + 0.25) / panels.chordwise(), y[e], z[e]);
        }
        double[] row = matrix[i];
        for (int s = 0; s < count; s++) {
            double kept = flow[s * NARROW] - flow[(s + 1) * NARROW];
            double before = 0;
            double after = 0;
            for (int m = 0; m < NARROW; m++) {
                double pair = flow[s * NARROW + m + 1] - flow[s * NARROW + m];
                double u = (m + 0.5) / NARROW - 0.5;
                kept += pair * (1 - u * u);
                before += pair * u * (u - 1) / 2;
                after += pair * u * (u + 1) / 2;
            }
            // Beyond a tip the circulation goes on with the other sign, beyond the middle as in the mirror image.
            if (s > 0) {
                row[panels.panel(line, k, s - 1)] += weight * before;
            } else if (lineBefore >= 0) {
                row[panels.panel(lineBefore, k, count(lineBefore) - 1)] += weight * before;
            } else {
                kept += panels.lines().get(line).line().fromIsTip() ? -before : before;
            }
            if (s < count - 1) {
                row[panels.panel(line, k, s + 1)] += weight * after;
            } else if (lineAfter >= 0) {
                row[panels.panel(lineAfter, k, 0)] += weight * after;
            } else {
                kept -= after;
            }
            row[panels.panel(line, k, s)] += weight * kept;
        }
    }

    private int count(int ofLine) {
        return panels.firstStrip(ofLine + 1) - panels.firstStrip(ofLine);
    }

    private double leg(int i, int side, double fromX, double fromY, double fromZ) {
        double dx = panels.controlX[i] - fromX;
        double dy = side * panels.controlY[i] - fromY;
        double dz = panels.controlZ[i] - fromZ;
        double across = dy * dy + dz * dz;
        double r = Math.sqrt(dx * dx + across);
        return (r + dx) * (panels.normalZ[i] * dy - side * panels.normalY[i] * dz) / (r * (across + 1e-300));
    }
}
