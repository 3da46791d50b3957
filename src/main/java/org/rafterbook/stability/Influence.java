package org.rafterbook.stability;

import java.util.Arrays;

/** The normal velocity at every control point of unit circulation on every horseshoe. */
final class Influence {

    private Influence() {}

    /** The matrix by control points (rows) and panels (columns), 1/m. */
    static double[][] of(Panels panels) {
        Horseshoes horseshoes = new Horseshoes(panels.cornerX, panels.cornerY, panels.cornerZ);
        double[][] matrix = new double[panels.size()][panels.size()];
        double[][] flows = new double[panels.chordwise()][panels.cornerX.length];
        for (int line = 0; line < panels.lines().size(); line++) {
            int strips = panels.firstStrip(line + 1) - panels.firstStrip(line);
            for (int strip = 0; strip < strips; strip++) {
                atStrip(panels, line, strip, horseshoes, flows);
                for (int k = 0; k < flows.length; k++) {
                    keep(panels, flows[k], matrix[panels.panel(line, k, strip)]);
                }
            }
        }
        NearVortex.refine(panels, matrix);
        NearWake.refine(panels, matrix);
        return matrix;
    }

    /** The flow of every horseshoe at the control points of one strip, which lie behind one another. */
    private static void atStrip(Panels panels, int line, int strip, Horseshoes horseshoes, double[][] flows) {
        int first = panels.panel(line, 0, strip);
        double y = panels.controlY[first];
        double z = panels.controlZ[first];
        double ny = panels.normalY[first];
        double nz = panels.normalZ[first];
        for (double[] flow : flows) {
            Arrays.fill(flow, 0);
        }
        // The mirror image of a panel acts on a point as the panel acts on the point's mirror image.
        for (int side = 1; side >= (panels.mirrored() ? -1 : 1); side -= 2) {
            horseshoes.line(side * y, z, side * ny, nz);
            for (int k = 0; k < flows.length; k++) {
                horseshoes.add(panels.controlX[panels.panel(line, k, strip)], 1, flows[k]);
            }
        }
    }

    private static void keep(Panels panels, double[] flow, double[] row) {
        for (int c = 0; c < flow.length; c++) {
            int panel = panels.panelOfCorner[c];
            if (panel >= 0) {
                row[panel] = flow[c] / (4 * Math.PI);
            }
        }
    }
}
