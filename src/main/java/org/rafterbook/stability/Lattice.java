package org.rafterbook.stability;

import java.util.Arrays;
import java.util.List;
import org.rafterbook.airframe.Surface;

/** One lattice with its factored influence matrix: circulation for any onset flow. */
final class Lattice {

    private static final int MOST_ROUNDS = 16;
    private static final double NOTHING_LEFT = 1e-10;

    private final Panels panels;
    private final int surfaces;
    private final double[][] influence;
    private final DenseLu lu;

    Lattice(List<PanelLine> lines, SpanGrid grid, int chordwise, boolean mirrored, int surfaces) {
        this.surfaces = surfaces;
        panels = new Panels(lines, grid, chordwise, mirrored);
        influence = Influence.of(panels);
        lu = new DenseLu(copy(influence));
    }

    Panels panels() {
        return panels;
    }

    /** Normal flow on the panels of one surface turned by one radian, leading edge up. */
    double[] turned(int surface) {
        return onset(i -> panels.surface[i] == surface ? -panels.normalZ[i] : 0);
    }

    /** Normal flow of a nose-up pitch rate of one radian per second and unit speed about the origin. */
    double[] pitching() {
        return onset(i -> -panels.normalZ[i] * panels.controlX[i]);
    }

    /** Normal flow on a surface with a parabolic camber line of unit height over chord. */
    double[] cambered(int surface) {
        return onset(i -> panels.surface[i] == surface ? 4 * (1 - 2 * panels.along[i]) : 0);
    }

    /** Normal flow on a surface twisted as its ribs say, leading edge up. */
    double[] twisted(int surface, Surface ribs) {
        List<SpanLine> lines = SpanLine.of(surface, ribs, panels.mirrored());
        double[] twist = panels.strips().stream()
                .mapToDouble(strip -> strip.surface() == surface ? twist(lines, strip.middleY()) : 0)
                .toArray();
        return onset(i -> -panels.normalZ[i] * twist[panels.strip[i]]);
    }

    private static double twist(List<SpanLine> lines, double yM) {
        return lines.get(lines.size() > 1 && yM > lines.get(1).fromM() ? 1 : 0)
                .at(yM)
                .twistRad();
    }

    private interface OfPanel {
        double at(int panel);
    }

    private double[] onset(OfPanel of) {
        double[] onset = new double[panels.size()];
        for (int i = 0; i < onset.length; i++) {
            onset[i] = of.at(i);
        }
        return onset;
    }

    double[] solve(double[] onset) {
        return lu.solve(onset);
    }

    Loads loads(double[] circulation) {
        Loads loads = Loads.zero(surfaces, panels.strips().size());
        double halves = panels.mirrored() ? 2 : 1;
        for (int i = 0; i < circulation.length; i++) {
            int strip = panels.strip[i];
            double lift = halves * circulation[i] * panels.strips().get(strip).width();
            loads.lift()[panels.surface[i]] += lift;
            loads.moment()[panels.surface[i]] += lift * panels.boundX[i];
            loads.circulation()[strip] += circulation[i];
        }
        return loads;
    }

    /** Mean downwash angle at one surface that the others cause, weighted by area. */
    double downwashAt(int surface, double[] circulation) {
        double angle = 0;
        double area = 0;
        for (int i = 0; i < circulation.length; i++) {
            if (panels.surface[i] != surface) {
                continue;
            }
            double flow = 0;
            for (int j = 0; j < circulation.length; j++) {
                if (panels.surface[j] != surface) {
                    flow += influence[i][j] * circulation[j];
                }
            }
            Strip s = panels.strips().get(panels.strip[i]);
            double weight = s.width() * s.middleChord();
            angle -= weight * flow / panels.normalZ[i];
            area += weight;
        }
        return area > 0 ? angle / area : 0;
    }

    /**
     * Circulation for an onset with the influence of one surface on another scaled. The factors of the lattice itself come
     * close: the rest is taken out again and again until nothing is left, and only where that does not work, between wings
     * a small gap apart, is the scaled matrix factored.
     *
     * @param factor by row surface and column surface
     */
    double[] solveScaled(double[] onset, double[][] factor) {
        double[] circulation = lu.solve(onset);
        double last = Double.POSITIVE_INFINITY;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] change = lu.solve(rest(onset, factor, circulation));
            double largest = 0;
            double most = 0;
            for (int i = 0; i < change.length; i++) {
                circulation[i] += change[i];
                largest = Math.max(largest, Math.abs(change[i]));
                most = Math.max(most, Math.abs(circulation[i]));
            }
            if (largest <= NOTHING_LEFT * most) {
                return circulation;
            }
            if (!(largest < last / 2)) {
                break;
            }
            last = largest;
        }
        return factored(factor).solve(onset);
    }

    private double[] rest(double[] onset, double[][] factor, double[] circulation) {
        int lines = panels.lines().size();
        return onset(i -> {
            double[] factors = factor[panels.surface[i]];
            double rest = onset[i];
            for (int line = 0; line < lines; line++) {
                double flow =
                        DenseLu.dot(influence[i], circulation, panels.firstPanel(line), panels.firstPanel(line + 1));
                rest -= factors[panels.lines().get(line).line().surface()] * flow;
            }
            return rest;
        });
    }

    private DenseLu factored(double[][] factor) {
        double[][] scaled = copy(influence);
        for (int i = 0; i < scaled.length; i++) {
            double[] row = scaled[i];
            double[] factors = factor[panels.surface[i]];
            for (int j = 0; j < row.length; j++) {
                row[j] *= factors[panels.surface[j]];
            }
        }
        return new DenseLu(scaled);
    }

    private static double[][] copy(double[][] matrix) {
        double[][] copy = new double[matrix.length][];
        Arrays.setAll(copy, i -> matrix[i].clone());
        return copy;
    }
}
