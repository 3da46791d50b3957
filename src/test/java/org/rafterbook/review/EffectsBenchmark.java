package org.rafterbook.review;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Prints how long the sampler takes for a season of 100 flights and 30 columns, against the bare cost of forming and
 * factorising the same 21 000 normal matrices in the same run, in processor time of the one thread used. Run its main;
 * nothing is asserted.
 */
public final class EffectsBenchmark {

    private static final int ROUNDS = 7;
    private static final int DRAWS = Sampler.BURN_IN + Sampler.KEPT;

    private EffectsBenchmark() {}

    public static void main(String[] args) {
        Design design = new Design(season());
        CensoredModel model = design.model();
        double[][] all = withDaysAsColumns(design);
        double[] sampled = new double[ROUNDS];
        double[] sparse = new double[ROUNDS];
        double[] dense = new double[ROUNDS];
        for (int round = -2; round < ROUNDS; round++) {
            int k = Math.max(round, 0);
            sampled[k] = seconds(() -> Sampler.run(model, List.of(design.unit(1)), Progress.NONE));
            sparse[k] = seconds(() -> bareSparse(all));
            dense[k] = seconds(() -> bareDense(all));
        }
        System.out.printf(
                Locale.ROOT,
                "%d flights, %d columns, %d draws: sampler %.3f s; bare forming and factorising %.3f s from sparse rows"
                        + " (ratio %.2f), %.3f s from full rows (ratio %.2f)%n",
                all.length,
                all[0].length,
                DRAWS,
                median(sampled),
                median(sparse),
                median(sampled) / median(sparse),
                median(dense),
                median(sampled) / median(dense));
    }

    private static ReviewInput season() {
        SeasonBuilder season = new SeasonBuilder();
        for (int i = 0; i < 100; i++) {
            if (i % 10 == 0) {
                season.day(7 * (i / 10));
            }
            Map<String, Level> settings = new TreeMap<>();
            settings.put("wing", Level.number((i / 7) % 4));
            settings.put("tail", Level.number((i / 5) % 4));
            settings.put("pitch", Level.number((i / 11) % 4));
            settings.put("loop", Level.number((i / 3) % 3));
            double time = 600 * (1 + 0.05 * Math.sin(12.9898 * i));
            season.add(ReviewFlight.of(
                            "f" + i,
                            "day" + i / 10,
                            SeasonBuilder.FIRST_DAY.plusDays(7 * (i / 10)),
                            1 + i % 10,
                            i % 10 == 9 ? Outcome.atLeast(time, "touched") : Outcome.exact(time),
                            settings)
                    .with(MotorUse.turns(1000.0 + 17 * (i % 9)), 1.19 + 0.002 * ((i / 10) % 5)));
        }
        return season.input();
    }

    private static double[][] withDaysAsColumns(Design design) {
        int columns = design.columns().size();
        int days = design.sessions().size();
        double[][] rows = new double[design.flights().size()][columns + days];
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < columns; j++) {
                rows[i][j] = design.at(i, j);
            }
            rows[i][columns + design.sessions().indexOf(design.flights().get(i).sessionId())] = 1;
        }
        return rows;
    }

    /** Forms from the products of each row's entries other than 0, places looked up beforehand, and factorises. */
    private static double bareSparse(double[][] rows) {
        int d = rows[0].length;
        int[][] targets = new int[rows.length][];
        double[][] products = new double[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            double[] row = rows[i];
            int[] used = IntStream.range(0, d).filter(j -> row[j] != 0).toArray();
            targets[i] = new int[used.length * (used.length + 1) / 2];
            products[i] = new double[targets[i].length];
            int p = 0;
            for (int a = 0; a < used.length; a++) {
                for (int b = 0; b <= a; b++) {
                    targets[i][p] = SparseRows.packed(used[a], used[b]);
                    products[i][p++] = row[used[a]] * row[used[b]];
                }
            }
        }
        double[] packed = new double[d * (d + 1) / 2];
        double check = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            Arrays.fill(packed, 0);
            for (int i = 0; i < rows.length; i++) {
                double weight = 400 + i + draw % 7;
                int[] target = targets[i];
                double[] product = products[i];
                for (int p = 0; p < target.length; p++) {
                    packed[target[p]] += weight * product[p];
                }
            }
            check += factorise(packed, d);
        }
        return check;
    }

    private static double bareDense(double[][] rows) {
        int d = rows[0].length;
        double[] packed = new double[d * (d + 1) / 2];
        double check = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            Arrays.fill(packed, 0);
            for (int i = 0; i < rows.length; i++) {
                double weight = 400 + i + draw % 7;
                for (int a = 0; a < d; a++) {
                    double scaled = weight * rows[i][a];
                    for (int b = 0; b <= a; b++) {
                        packed[SparseRows.packed(a, b)] += scaled * rows[i][b];
                    }
                }
            }
            check += factorise(packed, d);
        }
        return check;
    }

    private static double factorise(double[] packed, int d) {
        for (int i = 0; i < d; i++) {
            packed[SparseRows.packed(i, i)] += 300;
            int ri = SparseRows.packed(i, 0);
            for (int j = 0; j <= i; j++) {
                int rj = SparseRows.packed(j, 0);
                double sum = packed[ri + j];
                for (int k = 0; k < j; k++) {
                    sum -= packed[ri + k] * packed[rj + k];
                }
                packed[ri + j] = i == j ? Math.sqrt(sum) : sum / packed[rj + j];
            }
        }
        return packed[packed.length - 1];
    }

    private static double seconds(Runnable work) {
        ThreadMXBean thread = ManagementFactory.getThreadMXBean();
        long start = thread.getCurrentThreadCpuTime();
        work.run();
        return (thread.getCurrentThreadCpuTime() - start) / 1e9;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
