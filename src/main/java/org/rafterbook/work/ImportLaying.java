package org.rafterbook.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.flight.FlightDraft;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Writer;

/** Writes a model's riggings as an import leaves them. */
final class ImportLaying {

    private ImportLaying() {}

    /**
     * Writes the strip that fits the flights, and gives each its rigging.
     *
     * @param flights all of the model's in flying order
     * @param flown the same flights with their versions
     * @param first true where the model has not flown before: what it was rigged to meanwhile goes
     */
    static void lay(
            Writer w,
            ImportTally tally,
            String modelId,
            List<FlyingOrder.Step> flights,
            List<ImportStrip.Flown> flown,
            boolean first) {
        List<Rigging> riggings = Riggings.ordered(w, modelId);
        ImportStrip laid = ImportStrip.lay(flown, riggings, first);
        Map<ImportStrip.Slot, Rigging> made = new HashMap<>();
        List<Rigging> strip = new ArrayList<>();
        for (ImportStrip.Slot slot : laid.strip()) {
            Rigging rigging = slot.there;
            if (rigging == null) {
                tally.add("riggings");
                rigging = w.insert(new Rigging(
                        Logbook.newId(),
                        modelId,
                        strip.size() + 1,
                        slot.versionId,
                        strip.isEmpty() ? null : strip.get(strip.size() - 1).id(),
                        slot.begin,
                        slot.reason,
                        slot.trialId));
            }
            made.put(slot, rigging);
            strip.add(rigging);
        }
        Corrections.renumber(w, strip);
        Set<String> kept = strip.stream().map(Rigging::id).collect(Collectors.toSet());
        for (Rigging rigging : riggings) {
            if (!kept.contains(rigging.id())) {
                w.remove(Rigging.class, rigging.id());
                Riggings.forgetIfUnused(w, rigging.versionId());
            }
        }
        for (int i = 0; i < flights.size(); i++) {
            Rigging rigging = Objects.requireNonNull(made.get(laid.ofFlight().get(i)));
            FlightLine line = flights.get(i).line();
            if (line == null) {
                Objects.requireNonNull(flights.get(i).imported()).riggingId = rigging.id();
            } else if (!rigging.id().equals(line.flight().riggingId())) {
                w.update(FlightDraft.of(line.flight()).riggingId(rigging.id()).done());
            }
        }
    }
}
