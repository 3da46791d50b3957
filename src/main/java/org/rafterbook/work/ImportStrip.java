package org.rafterbook.work;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Rigging;

/**
 * Lays a model's riggings anew along its flights in flying order: a rigging begins where the version changes. Riggings
 * that are there stay, and stay apart where they were; one that is interrupted by an imported flight of another version
 * goes on as a rigging of its own.
 */
final class ImportStrip {

    /** A rigging of the strip: one that is there, or one to be made. */
    static final class Slot {
        final @Nullable Rigging there;
        final String versionId;
        final @Nullable Instant begin;
        final @Nullable String reason;
        final @Nullable String trialId;

        Slot(
                @Nullable Rigging there,
                String versionId,
                @Nullable Instant begin,
                @Nullable String reason,
                @Nullable String trialId) {
            this.there = there;
            this.versionId = versionId;
            this.begin = begin;
            this.reason = reason;
            this.trialId = trialId;
        }

        static Slot of(Rigging rigging) {
            return new Slot(rigging, rigging.versionId(), rigging.setAt(), rigging.reason(), rigging.trialId());
        }
    }

    /**
     * A flight in flying order.
     *
     * @param rigging the rigging it has, null for an imported one
     * @param versionId the version it flew on
     * @param at when, as well as it is known
     */
    record Flown(
            @Nullable Rigging rigging,
            String versionId,
            @Nullable Instant at,
            @Nullable String reason) {}

    private final List<Slot> strip = new ArrayList<>();
    private final List<Slot> ofFlight = new ArrayList<>();
    private final Set<String> begun = new HashSet<>();
    /** Riggings without a flight, by the one before them. */
    private final Map<String, Rigging> waiting = new HashMap<>();

    private @Nullable Slot current;

    private ImportStrip(List<Rigging> riggings, List<Flown> flights) {
        Set<String> flown = new HashSet<>();
        for (Flown flight : flights) {
            if (flight.rigging() != null) {
                flown.add(flight.rigging().id());
            }
        }
        for (Rigging rigging : riggings) {
            if (rigging.previousId() != null && !flown.contains(rigging.id())) {
                waiting.put(rigging.previousId(), rigging);
            }
        }
    }

    /** Lays the strip; unflown riggings keep their place after the one before them. */
    static ImportStrip lay(List<Flown> flights, List<Rigging> riggings, boolean dropUnflown) {
        ImportStrip laid = new ImportStrip(riggings, flights);
        Rigging[] next = new Rigging[flights.size()];
        Rigging coming = null;
        for (int i = flights.size() - 1; i >= 0; i--) {
            next[i] = coming;
            coming = flights.get(i).rigging() == null ? coming : flights.get(i).rigging();
        }
        for (int i = 0; i < flights.size(); i++) {
            laid.ofFlight.add(laid.slotOf(flights.get(i), next[i]));
        }
        laid.unflown(riggings, dropUnflown);
        return laid;
    }

    /** All riggings in order. */
    List<Slot> strip() {
        return strip;
    }

    /** The rigging of each flight, in the order the flights were given. */
    List<Slot> ofFlight() {
        return ofFlight;
    }

    private Slot slotOf(Flown flight, @Nullable Rigging next) {
        Slot now = current;
        Rigging own = flight.rigging();
        if (own == null) {
            if (now != null && now.versionId.equals(flight.versionId()) && now.trialId == null) {
                return now;
            }
            if (next != null
                    && next.versionId().equals(flight.versionId())
                    && next.trialId() == null
                    && !begun.contains(next.id())) {
                return begin(Slot.of(next));
            }
            Rigging set = now == null || now.there == null ? null : waiting.get(now.there.id());
            if (set != null && set.versionId().equals(flight.versionId()) && set.trialId() == null) {
                return begin(Slot.of(set));
            }
            return begin(new Slot(null, flight.versionId(), flight.at(), flight.reason(), null));
        }
        if (now != null && now.there != null && now.there.id().equals(own.id())) {
            return now;
        }
        if (!begun.contains(own.id())) {
            return begin(Slot.of(own));
        }
        if (now != null && now.versionId.equals(own.versionId()) && Objects.equals(now.trialId, own.trialId())) {
            return now;
        }
        return begin(new Slot(null, own.versionId(), flight.at(), own.reason(), own.trialId()));
    }

    private Slot begin(Slot slot) {
        strip.add(slot);
        current = slot;
        if (slot.there != null) {
            begun.add(slot.there.id());
        }
        return slot;
    }

    private void unflown(List<Rigging> riggings, boolean drop) {
        Rigging before = null;
        for (Rigging rigging : riggings) {
            if (!begun.contains(rigging.id()) && (!drop || rigging.trialId() != null)) {
                int place = before == null ? 0 : lastOf(before) + 1;
                Instant set = rigging.setAt();
                while (place < strip.size() && strip.get(place).there == null && isBefore(strip.get(place), set)) {
                    place++;
                }
                strip.add(place, Slot.of(rigging));
                begun.add(rigging.id());
            }
            before = begun.contains(rigging.id()) ? rigging : before;
        }
    }

    private static boolean isBefore(Slot slot, @Nullable Instant set) {
        return set == null || slot.begin == null || slot.begin.isBefore(set);
    }

    private int lastOf(Rigging rigging) {
        int last = -1;
        for (int i = 0; i < strip.size(); i++) {
            Rigging there = strip.get(i).there;
            if (there != null && there.id().equals(rigging.id())) {
                last = i;
            }
        }
        return last;
    }
}
