package org.rafterbook.stability;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import org.rafterbook.airframe.Airframe;

/**
 * Looks for the arrangements on which the default lattice is worst, and prints for each how far it lies from the same code's
 * runs at twice and four times the panels in both directions, extrapolated, in shares of what is allowed. Arguments: first
 * and last seed.
 */
public final class LatticeHunt {

    private static final int MANY = 700;

    private LatticeHunt() {}

    public static void main(String[] args) {
        long first = Long.parseLong(args[0]);
        long last = Long.parseLong(args[1]);
        for (long seed = first; seed <= last; seed++) {
            Airframe airframe = HostileArrangements.of(seed);
            long before = cpu();
            int unknowns =
                    GeometrySolution.of(airframe, LatticeSettings.DEFAULT).size();
            double took = (cpu() - before) / 1e6;
            if (unknowns > MANY) {
                System.out.printf(
                        Locale.ROOT,
                        "%5d %-36s left out: %d unknowns, %.0f ms%n",
                        seed,
                        HostileArrangements.kind(seed),
                        unknowns,
                        took);
                continue;
            }
            Converged.Error error = Converged.error(airframe);
            System.out.printf(
                    Locale.ROOT,
                    "%5d %-36s %s, %d along, %d unknowns, %.0f ms%n",
                    seed,
                    HostileArrangements.kind(seed),
                    error,
                    error.along(),
                    error.unknowns(),
                    took);
        }
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
