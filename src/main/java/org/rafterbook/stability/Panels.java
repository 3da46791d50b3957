package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The panels of all surfaces with one count along the chord: bound vortices on the panels' quarter line, control points on
 * their three-quarter line. Surfaces lie at the height of their root leading edge with the ribs' own rise; incidence, twist
 * and camber enter only through the onset flow. All lengths in metres.
 *
 * <p>Vortex corners are kept in rows along the span, one row for each piece and place along the chord, so that the right
 * corner of a panel and the left one lie next to each other.
 */
final class Panels {

    private final List<PanelLine> lines;
    private final SpanGrid grid;
    private final int chordwise;
    private final boolean mirrored;
    private final List<Strip> strips = new ArrayList<>();
    private final int[] firstStrip;
    private final int[] firstPanel;
    private final int size;

    /** Panels: their surface, strip, lift's place along the stick, control point, normal, place along the chord, twist. */
    final int[] surface;

    final int[] strip;
    final double[] boundX;
    final double[] controlX;
    final double[] controlY;
    final double[] controlZ;
    final double[] normalY;
    final double[] normalZ;
    final double[] along;

    /** Vortex corners, and the panel whose right corner each is (-1 for the last of a row). */
    final double[] cornerX;

    final double[] cornerY;
    final double[] cornerZ;
    final int[] panelOfCorner;

    /**
     * @param mirrored true where only the left half is modelled and its mirror image acts along
     */
    Panels(List<PanelLine> lines, SpanGrid grid, int chordwise, boolean mirrored) {
        this.lines = lines;
        this.grid = grid;
        this.chordwise = chordwise;
        this.mirrored = mirrored;
        firstStrip = new int[lines.size() + 1];
        firstPanel = new int[lines.size() + 1];
        int corners = 0;
        for (int l = 0; l < lines.size(); l++) {
            int count = addStrips(l);
            firstStrip[l + 1] = firstStrip[l] + count;
            firstPanel[l + 1] = firstPanel[l] + count * chordwise;
            corners += (count + 1) * chordwise;
        }
        size = firstPanel[lines.size()];
        surface = new int[size];
        strip = new int[size];
        boundX = new double[size];
        controlX = new double[size];
        controlY = new double[size];
        controlZ = new double[size];
        normalY = new double[size];
        normalZ = new double[size];
        along = new double[size];
        cornerX = new double[corners];
        cornerY = new double[corners];
        cornerZ = new double[corners];
        panelOfCorner = new int[corners];
        Arrays.fill(panelOfCorner, -1);
        int corner = 0;
        for (int l = 0; l < lines.size(); l++) {
            corner = addPanels(l, corner);
        }
    }

    private int addStrips(int l) {
        PanelLine line = lines.get(l);
        for (int j = 0; j < line.strips(); j++) {
            int g = line.first() + j;
            double share = (grid.mid(g) - grid.edge(g)) / (grid.edge(g + 1) - grid.edge(g));
            double trailing = Math.max(line.edgeAftM(j) + line.chordM(j), line.edgeAftM(j + 1) + line.chordM(j + 1));
            strips.add(new Strip(
                    line.line().surface(),
                    l,
                    g,
                    grid.edge(g),
                    line.heightM(j),
                    grid.edge(g + 1),
                    line.heightM(j + 1),
                    grid.mid(g),
                    mix(line.heightM(j), line.heightM(j + 1), share),
                    mix(line.edgeAftM(j), line.edgeAftM(j + 1), share),
                    mix(line.chordM(j), line.chordM(j + 1), share),
                    trailing));
        }
        return line.strips();
    }

    private int addPanels(int l, int firstCorner) {
        PanelLine line = lines.get(l);
        int count = line.strips();
        int corner = firstCorner;
        for (int k = 0; k < chordwise; k++) {
            for (int j = 0; j <= count; j++) {
                cornerX[corner] = line.edgeAftM(j) + line.chordM(j) * (k + 0.25) / chordwise;
                cornerY[corner] = line.edgeM(j);
                cornerZ[corner] = line.heightM(j);
                if (j < count) {
                    int panel = firstPanel[l] + k * count + j;
                    panelOfCorner[corner] = panel;
                    addPanel(panel, firstStrip[l] + j, k, line, j);
                }
                corner++;
            }
        }
        return corner;
    }

    private void addPanel(int panel, int stripIndex, int k, PanelLine line, int j) {
        Strip s = strips.get(stripIndex);
        surface[panel] = s.surface();
        strip[panel] = stripIndex;
        double vortex = (k + 0.25) / chordwise;
        boundX[panel] = (line.edgeAftM(j) + line.edgeAftM(j + 1) + vortex * (line.chordM(j) + line.chordM(j + 1))) / 2;
        along[panel] = (k + 0.75) / chordwise;
        controlX[panel] = s.middleEdge() + s.middleChord() * along[panel];
        controlY[panel] = s.middleY();
        controlZ[panel] = s.middleZ();
        normalY[panel] = -(s.z2() - s.z1()) / s.slant();
        normalZ[panel] = s.width() / s.slant();
    }

    private static double mix(double a, double b, double share) {
        return a + (b - a) * share;
    }

    int size() {
        return size;
    }

    int chordwise() {
        return chordwise;
    }

    boolean mirrored() {
        return mirrored;
    }

    SpanGrid grid() {
        return grid;
    }

    List<PanelLine> lines() {
        return lines;
    }

    List<Strip> strips() {
        return strips;
    }

    /** First strip of a piece; of the number of pieces, the number of strips. */
    int firstStrip(int line) {
        return firstStrip[line];
    }

    /** First panel of a piece; of the number of pieces, the number of panels. */
    int firstPanel(int line) {
        return firstPanel[line];
    }

    /** Panel of a piece at a place along the chord and a strip within the piece. */
    int panel(int line, int along, int stripOfLine) {
        return firstPanel[line] + along * (firstStrip[line + 1] - firstStrip[line]) + stripOfLine;
    }
}
