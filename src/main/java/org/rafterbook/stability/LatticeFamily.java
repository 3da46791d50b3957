package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.rafterbook.airframe.Surface;

/**
 * Lattices of one arrangement that differ in the number of panels along the chord, and the weights by which their answers
 * are carried on to endless many panels (Richardson). With straight edges the error falls with the square of the count:
 * two lattices. Where edges bend it also falls as one over the count, for the flow close to a bend has no scale but the
 * panel's own length: a third lattice takes out both.
 */
final class LatticeFamily {

    /** Bends of the edges from which on a third lattice is solved, as a change of slope. */
    private static final double BENT = 0.3;

    private static final double[] ALONE = {1};
    private static final double[] SQUARE = {-1.0 / 3, 4.0 / 3};
    private static final double[] LINEAR_AND_SQUARE = {0.5, -4, 4.5};

    private final List<Lattice> lattices;
    private final double[] weights;

    private LatticeFamily(List<Lattice> lattices, double[] weights) {
        this.lattices = lattices;
        this.weights = weights;
    }

    static LatticeFamily of(List<Surface> surfaces, LatticeSettings settings) {
        boolean mirrored = surfaces.stream().allMatch(Surface::isSymmetric);
        List<SpanLine> lines = new ArrayList<>();
        for (int s = 0; s < surfaces.size(); s++) {
            lines.addAll(SpanLine.of(s, surfaces.get(s), mirrored));
        }
        SpanGrid grid = SpanGrid.of(lines, settings);
        List<PanelLine> laid =
                lines.stream().map(line -> new PanelLine(line, grid)).toList();
        double[] weights = ALONE;
        int least = settings.chordwise();
        if (settings.extrapolated()) {
            weights = grid.sweepBend() > BENT ? LINEAR_AND_SQUARE : SQUARE;
            least = ChordwiseCount.of(lines, settings.chordwise(), weights.length, grid.sweepBend());
        }
        int count = least;
        List<Lattice> lattices = IntStream.rangeClosed(1, weights.length)
                .mapToObj(times -> new Lattice(laid, grid, times * count, mirrored, surfaces.size()))
                .toList();
        return new LatticeFamily(lattices, weights);
    }

    /** The lattice with the fewest panels along the chord. */
    Lattice coarsest() {
        return lattices.get(0);
    }

    /** All of them, the one with the fewest panels first. */
    List<Lattice> lattices() {
        return lattices;
    }

    /** The circulations of each lattice for an onset flow. */
    List<double[]> solve(Function<Lattice, double[]> onset) {
        return lattices.stream()
                .map(lattice -> lattice.solve(onset.apply(lattice)))
                .toList();
    }

    /** The loads of circulations, carried on. */
    Loads loads(List<double[]> circulations) {
        Loads sum = coarsest().loads(circulations.get(0)).times(weights[0]);
        for (int l = 1; l < weights.length; l++) {
            sum = sum.plus(weights[l], lattices.get(l).loads(circulations.get(l)));
        }
        return sum;
    }

    /** Mean downwash angle that the other surfaces cause at one, carried on. */
    double downwashAt(int surface, List<double[]> circulations) {
        double angle = 0;
        for (int l = 0; l < weights.length; l++) {
            angle += weights[l] * lattices.get(l).downwashAt(surface, circulations.get(l));
        }
        return angle;
    }
}
