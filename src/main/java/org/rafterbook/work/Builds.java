package org.rafterbook.work;

import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.AirframeEvent;
import org.rafterbook.airframe.Model;
import org.rafterbook.logbook.Logbook;

/** Crashes, repairs and new coverings of a model, and the builds they begin. */
public final class Builds {

    /** What can happen to an airframe. */
    public enum Kind {
        CRASHED("crashed"),
        REPAIRED("repaired"),
        RE_COVERED("re-covered");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As it is stored and told. */
        public String word() {
            return word;
        }
    }

    private final Logbook logbook;
    private final Clock clock;
    private final Riggings riggings;

    Builds(Logbook logbook, Clock clock, Riggings riggings) {
        this.logbook = logbook;
        this.clock = clock;
        this.riggings = riggings;
    }

    /** What has happened to a model, the newest first. */
    public List<AirframeEvent> of(String modelId) {
        return logbook.read(r -> r.where(AirframeEvent.class, "modelId", modelId).stream()
                .sorted(Comparator.comparing(AirframeEvent::at).reversed())
                .toList());
    }

    /**
     * Keeps what happened. Unless the model is the same as before, its build number rises and it is rigged as the same
     * settings of the new build, which is another version.
     */
    public Rigged happened(String modelId, Kind kind, @Nullable String notes, boolean sameAsBefore) {
        return logbook.enter(kind.word(), w -> {
            Rigged before = Riggings.now(w, modelId);
            Integer build = sameAsBefore ? null : (Integer) (before.model().build() + 1);
            w.insert(new AirframeEvent(Logbook.newId(), modelId, clock.instant(), kind.word(), notes, build));
            if (build == null) {
                return before;
            }
            Model rebuilt = w.update(before.model().rebuilt(build));
            return riggings.set(w, rebuilt, before.values(), before.geometry(), kind.word(), null);
        });
    }
}
