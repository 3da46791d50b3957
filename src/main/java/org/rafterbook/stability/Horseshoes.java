package org.rafterbook.stability;

import java.util.Arrays;

/**
 * Horseshoe vortices side by side: the flow that each causes along a direction at a point (Biot-Savart), legs straight aft
 * along the stick.
 *
 * <p>Segment A to B at P, r1 = P - A, r2 = P - B: (r1 x r2)(|r1| + |r2|) / (4 pi |r1||r2|(|r1||r2| + r1.r2)), which has no
 * 0/0 on the segment's extension; leg from B along x: (x x r2)/(4 pi |r2|(|r2| - r2x)), written with (|r| + rx)/(ry^2 +
 * rz^2) in place of 1/(|r| - rx), whose difference cancels far behind. All flows are 4 pi times those of unit circulation.
 */
final class Horseshoes {

    /** Keeps the velocity on a leg's own line at zero instead of 0/0. */
    private static final double TINY = 1e-300;

    private final double[] cornerX;
    private final double[] cornerY;
    private final double[] cornerZ;
    private final double[] dx;
    private final double[] dy;
    private final double[] dz;
    private final double[] distance;
    private final double[] leg;
    private final double[] sum;

    /** Room for horseshoes between so many corners. */
    Horseshoes(int corners) {
        this(new double[corners], new double[corners], new double[corners]);
    }

    /** Horseshoes between corners, from right to left, m. */
    Horseshoes(double[] cornerX, double[] cornerY, double[] cornerZ) {
        this.cornerX = cornerX;
        this.cornerY = cornerY;
        this.cornerZ = cornerZ;
        int corners = cornerX.length;
        dx = new double[corners];
        dy = new double[corners];
        dz = new double[corners];
        distance = new double[corners];
        leg = new double[corners];
        sum = new double[corners];
    }

    /** Lays the horseshoes along one place of a piece's chord. */
    void place(PanelLine line, double alongChord) {
        for (int c = 0; c < cornerX.length; c++) {
            cornerX[c] = line.edgeAftM(c) + line.chordM(c) * alongChord;
            cornerY[c] = line.edgeM(c);
            cornerZ[c] = line.heightM(c);
        }
    }

    void clear() {
        Arrays.fill(sum, 0);
    }

    /** The sum of what was added for the horseshoe between a corner and the next. */
    double flow(int corner) {
        return sum[corner];
    }

    /** Adds the flow along (0, ny, nz) at a point. Both loops run along plain arrays so that they become vector instructions. */
    void add(double px, double py, double pz, double ny, double nz, double times) {
        int corners = sum.length;
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
            sum[c] += times * (bound + leg[c + 1] - leg[c]);
        }
    }
}
