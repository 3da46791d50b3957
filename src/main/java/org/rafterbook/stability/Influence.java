package org.rafterbook.stability;

import java.util.Arrays;

/**
 * The normal velocity at every control point of unit circulation on every horseshoe (Biot-Savart), legs straight aft along
 * the stick.
 *
 * <p>Segment A to B at P, r1 = P - A, r2 = P - B: (r1 x r2)(|r1| + |r2|) / (4 pi |r1||r2|(|r1||r2| + r1.r2)), which has no
 * 0/0 on the segment's extension; leg from B along x: (x x r2)/(4 pi |r2|(|r2| - r2x)), written with (|r| + rx)/(ry^2 +
 * rz^2) in place of 1/(|r| - rx), whose difference cancels far behind.
 */
final class Influence {

    /** Keeps the velocity on a leg's own line at zero instead of 0/0. */
    private static final double TINY = 1e-300;

    private final Panels panels;
    private final double[] dx;
    private final double[] dy;
    private final double[] dz;
    private final double[] distance;
    private final double[] leg;
    private final double[] sum;

    private Influence(Panels panels) {
        this.panels = panels;
        int corners = panels.cornerX.length;
        dx = new double[corners];
        dy = new double[corners];
        dz = new double[corners];
        distance = new double[corners];
        leg = new double[corners];
        sum = new double[corners];
    }

    /** The matrix by control points (rows) and panels (columns), 1/m. */
    static double[][] of(Panels panels) {
        Influence influence = new Influence(panels);
        double[][] matrix = new double[panels.size()][panels.size()];
        for (int i = 0; i < panels.size(); i++) {
            influence.row(i, matrix[i]);
        }
        NearWake.refine(panels, matrix);
        return matrix;
    }

    private void row(int i, double[] row) {
        Arrays.fill(sum, 0);
        double y = panels.controlY[i];
        double ny = panels.normalY[i];
        add(panels.controlX[i], y, panels.controlZ[i], ny, panels.normalZ[i]);
        if (panels.mirrored()) {
            // The mirror image of a panel acts on a point as the panel acts on the point's mirror image.
            add(panels.controlX[i], -y, panels.controlZ[i], -ny, panels.normalZ[i]);
        }
        for (int c = 0; c < sum.length; c++) {
            int panel = panels.panelOfCorner[c];
            if (panel >= 0) {
                row[panel] = sum[c] / (4 * Math.PI);
            }
        }
    }

    /** Both loops run along plain arrays so that they become vector instructions. */
    private void add(double px, double py, double pz, double ny, double nz) {
        int corners = sum.length;
        double[] cornerX = panels.cornerX;
        double[] cornerY = panels.cornerY;
        double[] cornerZ = panels.cornerZ;
        for (int c = 0; c < corners; c++) {
            double x = px - cornerX[c];
            double y = py - cornerY[c];
            double z = pz - cornerZ[c];
            double side = y * y + z * z;
            double r = Math.sqrt(x * x + side);
            dx[c] = x;
            dy[c] = y;
            dz[c] = z;
            distance[c] = r;
            leg[c] = (r + x) * (nz * y - ny * z) / (r * (side + TINY));
        }
        for (int c = 0; c < corners - 1; c++) {
            double r1 = distance[c];
            double r2 = distance[c + 1];
            double dot = dx[c] * dx[c + 1] + dy[c] * dy[c + 1] + dz[c] * dz[c + 1];
            double crossY = dz[c] * dx[c + 1] - dx[c] * dz[c + 1];
            double crossZ = dx[c] * dy[c + 1] - dy[c] * dx[c + 1];
            double bound = (r1 + r2) * (ny * crossY + nz * crossZ) / (r1 * r2 * (r1 * r2 + dot));
            sum[c] += bound + leg[c + 1] - leg[c];
        }
    }
}
