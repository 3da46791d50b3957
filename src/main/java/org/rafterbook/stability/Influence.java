package org.rafterbook.stability;

/** The normal velocity at every control point of unit circulation on every horseshoe. */
final class Influence {

    private Influence() {}

    /** The matrix by control points (rows) and panels (columns), 1/m. */
    static double[][] of(Panels panels) {
        Horseshoes horseshoes = new Horseshoes(panels.cornerX, panels.cornerY, panels.cornerZ);
        double[][] matrix = new double[panels.size()][panels.size()];
        for (int i = 0; i < panels.size(); i++) {
            double x = panels.controlX[i];
            double y = panels.controlY[i];
            double z = panels.controlZ[i];
            double ny = panels.normalY[i];
            double nz = panels.normalZ[i];
            horseshoes.clear();
            horseshoes.add(x, y, z, ny, nz, 1);
            if (panels.mirrored()) {
                // The mirror image of a panel acts on a point as the panel acts on the point's mirror image.
                horseshoes.add(x, -y, z, -ny, nz, 1);
            }
            for (int c = 0; c < panels.panelOfCorner.length; c++) {
                int panel = panels.panelOfCorner[c];
                if (panel >= 0) {
                    matrix[i][panel] = horseshoes.flow(c) / (4 * Math.PI);
                }
            }
        }
        NearVortex.refine(panels, matrix);
        NearWake.refine(panels, matrix);
        return matrix;
    }
}
