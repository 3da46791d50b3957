package org.rafterbook.stability;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeEdits;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;

/**
 * Prints how long models take at default settings, from the sheet to the neutral point, beside EJML's LU of the same
 * matrices in the same run, and how long a turned incidence takes, in processor time of the one thread used. Run its main;
 * nothing is asserted.
 */
public final class LatticeBenchmark {

    private static final int ROUNDS = 201;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private LatticeBenchmark() {}

    public static void main(String[] args) {
        models().forEach(LatticeBenchmark::print);
    }

    private static Map<String, Airframe> models() {
        Surface tail = Models.tail(310, 105, 45, 260, 80);
        Map<String, Airframe> models = new LinkedHashMap<>();
        models.put("one wing and tail", Models.airframe(Models.wing(420, 110), Models.tail(320, 110, 25, 270, 80)));
        models.put(
                "two wings and tail",
                Models.airframe(Models.wing(400, 105), Models.rectangle("upper", Role.WING, 0, 90, 400, 105), tail));
        models.put(
                "two unequal tapered wings, rounded tail",
                Models.airframe(
                        Models.surface("lower", Role.WING, 0, 0, Planforms.taper(0.36, 0.11, 0.085, 0.25)),
                        Models.surface("upper", Role.WING, -30, 90, Planforms.taper(0.42, 0.115, 0.085, 0.25)),
                        Models.surface("tail", Role.TAILPLANE, 300, 45, Planforms.roundedTips(0.26, 0.08, 0.04, 0.5))));
        models.put("two swept wings and tail", swept(tail));
        return models;
    }

    private static Airframe swept(Surface tail) {
        List<Surface> wings = List.of(
                Models.surface("lower", Role.WING, 0, 0, Planforms.taper(0.40, 0.12, 0.06, 1)),
                Models.surface("upper", Role.WING, -30, 90, Planforms.taper(0.40, 0.12, 0.06, 1)));
        return Models.airframe(wings.get(0), wings.get(1), tail);
    }

    private static void print(String name, Airframe airframe) {
        List<DMatrixRMaj> matrices = LatticeFamily.of(airframe.surfaces(), LatticeSettings.DEFAULT).lattices().stream()
                .map(lattice -> new DMatrixRMaj(Influence.of(lattice.panels())))
                .toList();
        GeometrySolution solution = GeometrySolution.of(airframe, LatticeSettings.DEFAULT);
        TrimConditions conditions = TrimConditions.straight(4e-3, solution.neutralPointM() - 0.01, 1.2);
        Airframe turned = AirframeEdits.turned(airframe, "tail", -0.02);
        double[] solved = new double[ROUNDS];
        double[] factored = new double[ROUNDS];
        double[] trimmed = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            solved[round] = milliseconds(() -> GeometrySolution.of(airframe, LatticeSettings.DEFAULT));
            factored[round] = milliseconds(() -> matrices.forEach(LatticeBenchmark::factor));
            trimmed[round] = milliseconds(() -> Trim.of(solution, turned, conditions));
        }
        System.out.printf(
                Locale.ROOT,
                "%s: unknowns %s; from sheet to neutral point %.2f ms, EJML's LU alone %.2f ms (ratio %.2f); a turned"
                        + " incidence, trimmed, %.3f ms%n",
                name,
                matrices.stream().map(m -> m.numRows).toList(),
                median(solved),
                median(factored),
                median(solved) / median(factored),
                median(trimmed));
    }

    private static void factor(DMatrixRMaj matrix) {
        if (!LinearSolverFactory_DDRM.lu(matrix.numRows).setA(matrix.copy())) {
            throw new IllegalStateException("singular");
        }
    }

    private static double milliseconds(Runnable work) {
        long before = THREADS.getCurrentThreadCpuTime();
        work.run();
        return (THREADS.getCurrentThreadCpuTime() - before) / 1e6;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
