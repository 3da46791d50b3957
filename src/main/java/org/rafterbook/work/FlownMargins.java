package org.rafterbook.work;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.power.Motor;

/** The stability margins of a model's flights, each computed once for all that flew alike. */
final class FlownMargins {

    /** A margin depends on these three alone. */
    private record Flown(String versionId, @Nullable String motorId, double fraction) {

        static Flown of(Rigged rigged, FlightLine line) {
            Motor motor = line.motor();
            return new Flown(
                    rigged.version().id(),
                    motor == null ? null : motor.id(),
                    line.flight().partialFraction());
        }
    }

    private final Map<Flown, @Nullable Double> percent = new HashMap<>();
    private final boolean open;

    /**
     * Computes them, or takes those that are told at once.
     *
     * @param byRigging what the model stood at, by the id of the rigging
     * @param quickly true to leave out what would have to be computed
     * @param progress told of each margin, which may take a lattice
     */
    FlownMargins(
            List<FlightLine> lines,
            Map<String, Rigged> byRigging,
            MarginPercent margins,
            boolean quickly,
            Progress progress) {
        Set<String> slow = quickly ? slow(byRigging, margins) : Set.of();
        open = !slow.isEmpty();
        Set<Flown> asked = new LinkedHashSet<>();
        for (FlightLine line : lines) {
            Rigged rigged =
                    line.rigging() == null ? null : byRigging.get(line.rigging().id());
            if (rigged != null && !slow.contains(rigged.version().id())) {
                asked.add(Flown.of(rigged, line));
            }
        }
        for (Flown key : asked) {
            progress.step(percent.size(), asked.size(), "margins");
            percent.put(key, margins.percent(key.versionId(), key.motorId(), key.fraction()));
        }
    }

    private static Set<String> slow(Map<String, Rigged> byRigging, MarginPercent margins) {
        Set<String> seen = new HashSet<>();
        Set<String> slow = new HashSet<>();
        for (Rigged rigged : byRigging.values()) {
            String id = rigged.version().id();
            if (seen.add(id) && !margins.isQuick(rigged.version())) {
                slow.add(id);
            }
        }
        return slow;
    }

    /** Per cent of the mean chord; null where it is not known, or not yet. */
    @Nullable
    Double of(Rigged rigged, FlightLine line) {
        return percent.get(Flown.of(rigged, line));
    }

    /** True where the margin of any version rigged has still to be computed. */
    boolean isOpen() {
        return open;
    }
}
