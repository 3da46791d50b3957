package org.rafterbook.stability;

import java.util.Arrays;

/**
 * Horseshoe vortices side by side: the flow that each causes along a direction at a point (Biot-Savart), legs straight aft
 * along the stick.
 *
 * <p>Segment A to B at P, r1 = P - A, r2 = P - B: (r1 x r2)(|r1| + |r2|) / (4 pi |r1||r2|(|r1||r2| + r1.r2)), which has no
 * 0/0 on the segment's extension; leg from B along x: (x x r2)/(4 pi |r2|(|r2| - r2x)), written with (|r| + rx)/(ry^2 +
 * rz^2) in place of 1/(|r| - rx), whose difference cancels far behind. All flows are 4 pi times those of unit circulation.
 *
 * <p>What depends on a point's place across and its height alone is worked out once for all points behind one another. Each
 * loop runs along plain arrays at one index and fills one of them: such loops become vector instructions. What belongs to
 * the next corner is therefore copied into arrays of its own.
 */
final class Horseshoes {

    /** Keeps the velocity on a leg's own line at zero instead of 0/0. */
    private static final double TINY = 1e-300;

    private final double[] cornerX;
    private final double[] cornerY;
    private final double[] cornerZ;
    /** Of the line through the points: square of the distance to it, flow of a leg without end, product of two sides. */
    private final double[] square;

    private final double[] across;
    private final double[] endless;
    private final double[] beside;

    private final double[] acrossNext;
    private final double[] before;
    private final double[] beforeNext;
    private final double[] distance;
    private final double[] distanceNext;
    private final double[] leg;
    private final double[] legNext;
    private final double[] bound;
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
        square = new double[corners];
        across = new double[corners];
        endless = new double[corners];
        beside = new double[corners];
        acrossNext = new double[corners];
        before = new double[corners];
        beforeNext = new double[corners];
        distance = new double[corners];
        distanceNext = new double[corners];
        leg = new double[corners];
        legNext = new double[corners];
        bound = new double[corners];
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

    /** Takes points on a line along the stick, and the direction (0, ny, nz) along which flow is looked for. */
    void line(double py, double pz, double ny, double nz) {
        int corners = sum.length;
        for (int c = 0; c < corners; c++) {
            double y = py - cornerY[c];
            double z = pz - cornerZ[c];
            square[c] = y * y + z * z;
        }
        for (int c = 0; c < corners; c++) {
            across[c] = nz * (py - cornerY[c]) - ny * (pz - cornerZ[c]);
        }
        for (int c = 0; c < corners; c++) {
            endless[c] = across[c] / (square[c] + TINY);
        }
        for (int c = 0; c < corners - 1; c++) {
            beside[c] = (py - cornerY[c]) * (py - cornerY[c + 1]) + (pz - cornerZ[c]) * (pz - cornerZ[c + 1]);
        }
        next(across, acrossNext);
    }

    private static void next(double[] values, double[] ofNext) {
        System.arraycopy(values, 1, ofNext, 0, values.length - 1);
    }

    /** Adds the flow at a point of the line, so many times, to sums by corner. */
    void add(double px, double times, double[] sums) {
        int corners = sum.length;
        for (int c = 0; c < corners; c++) {
            before[c] = px - cornerX[c];
        }
        for (int c = 0; c < corners; c++) {
            distance[c] = Math.sqrt(before[c] * before[c] + square[c]);
        }
        for (int c = 0; c < corners; c++) {
            leg[c] = endless[c] + endless[c] * before[c] / distance[c];
        }
        next(before, beforeNext);
        next(distance, distanceNext);
        next(leg, legNext);
        for (int c = 0; c < corners; c++) {
            bound[c] = (distance[c] + distanceNext[c]) * (before[c] * acrossNext[c] - beforeNext[c] * across[c]);
        }
        for (int c = 0; c < corners; c++) {
            double rr = distance[c] * distanceNext[c];
            bound[c] = bound[c] / (rr * (rr + before[c] * beforeNext[c] + beside[c]));
        }
        // The last corner begins no horseshoe: what stands there is never asked for.
        for (int c = 0; c < corners; c++) {
            sums[c] += times * (bound[c] + legNext[c] - leg[c]);
        }
    }

    /** Adds the flow along (0, ny, nz) at a point, so many times. */
    void add(double px, double py, double pz, double ny, double nz, double times) {
        line(py, pz, ny, nz);
        add(px, times, sum);
    }
}
