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

    /**
     * Adds the flow along (0, ny, nz) at a point, so many times. Each loop runs along plain arrays and fills one of them:
     * such loops become vector instructions.
     */
    void add(double px, double py, double pz, double ny, double nz, double times) {
        int corners = sum.length;
        for (int c = 0; c < corners; c++) {
            double x = px - cornerX[c];
            double y = py - cornerY[c];
            double z = pz - cornerZ[c];
            distance[c] = Math.sqrt(x * x + y * y + z * z);
        }
        for (int c = 0; c < corners; c++) {
            double y = py - cornerY[c];
            double z = pz - cornerZ[c];
            double r = distance[c];
            leg[c] = (r + (px - cornerX[c])) * (nz * y - ny * z) / (r * (y * y + z * z + TINY));
        }
        for (int c = 0; c < corners - 1; c++) {
            double x1 = px - cornerX[c];
            double y1 = py - cornerY[c];
            double z1 = pz - cornerZ[c];
            double x2 = px - cornerX[c + 1];
            double y2 = py - cornerY[c + 1];
            double z2 = pz - cornerZ[c + 1];
            double r1 = distance[c];
            double r2 = distance[c + 1];
            double across = ny * (z1 * x2 - x1 * z2) + nz * (x1 * y2 - y1 * x2);
            double rr = r1 * r2;
            double bound = (r1 + r2) * across / (rr * (rr + (x1 * x2 + y1 * y2 + z1 * z2)));
            sum[c] += times * (bound + leg[c + 1] - leg[c]);
        }
    }
}
