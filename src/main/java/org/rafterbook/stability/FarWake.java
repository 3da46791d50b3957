package org.rafterbook.stability;

import java.util.List;

/** Induced drag from the flow across the wake far behind (Trefftz plane), for wakes that lie flat along the stick. */
final class FarWake {

    private final double[][] drag;

    FarWake(List<Strip> strips, boolean mirrored) {
        int n = strips.size();
        drag = new double[n][n];
        double halves = mirrored ? 2 : 1;
        for (int i = 0; i < n; i++) {
            Strip at = strips.get(i);
            double ny = -(at.z2() - at.z1()) / at.slant();
            double nz = at.width() / at.slant();
            for (int j = 0; j < n; j++) {
                double flow = pair(at.middleY(), at.middleZ(), ny, nz, strips.get(j));
                if (mirrored) {
                    flow += pair(-at.middleY(), at.middleZ(), -ny, nz, strips.get(j));
                }
                drag[i][j] = -halves / 2 * flow * at.slant() / (2 * Math.PI);
            }
        }
    }

    private static double pair(double y, double z, double ny, double nz, Strip of) {
        return one(y - of.y2(), z - of.z2(), ny, nz) - one(y - of.y1(), z - of.z1(), ny, nz);
    }

    private static double one(double dy, double dz, double ny, double nz) {
        return (nz * dy - ny * dz) / (dy * dy + dz * dz + 1e-300);
    }

    /** Induced drag over rho V^2, m^2, of strip circulations over V. */
    double drag(double[] circulation) {
        double sum = 0;
        for (int i = 0; i < circulation.length; i++) {
            sum += circulation[i] * DenseLu.dot(drag[i], circulation, 0, circulation.length);
        }
        return sum;
    }
}
