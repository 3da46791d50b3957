package org.rafterbook.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.airframe.Version;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.rules.ClassSheet;

/** What the Bench shows and does: a model with its rig strip, and a trim looked at before it is set. */
public final class BenchDesk {

    private final Logbook logbook;
    private final Riggings riggings;
    private final Margins margins;

    BenchDesk(Logbook logbook, Riggings riggings, Margins margins) {
        this.logbook = logbook;
        this.riggings = riggings;
        this.margins = margins;
    }

    /** One occasion of the strip: how the model was rigged, what changed and how many flights were flown. */
    public record Occasion(Rigged rigged, List<TrimChange> changes, int flights, boolean isReturn) {}

    /**
     * A model on the bench.
     *
     * @param strip newest first
     * @param good a version the flyer marked as well-behaved, null where there is none
     */
    public record Bench(
            List<Model> models,
            Rigged now,
            MarginAnswer margin,
            List<Occasion> strip,
            @Nullable Rigged good,
            @Nullable MarginAnswer goodMargin,
            @Nullable ClassSheet classSheet) {}

    /** The model asked for, else the one prepared in the Hall, else the first; empty where the logbook has no model. */
    public Optional<Bench> load(@Nullable String modelId) {
        List<Model> models = riggings.models();
        if (models.isEmpty()) {
            return Optional.empty();
        }
        String wanted = modelId == null
                ? logbook.read(r -> Optional.ofNullable(HallDesk.chosenModel(r, List.of())))
                        .orElse(null)
                : modelId;
        Model model =
                models.stream().filter(m -> m.id().equals(wanted)).findFirst().orElse(models.get(0));
        Rigged now = riggings.now(model.id());
        List<Rigged> strip = riggings.strip(model.id());
        Rigged good = strip.stream()
                .filter(r -> r.version().markedGood())
                .reduce((a, b) -> b)
                .orElse(null);
        String sheetId = model.classSheetId();
        return Optional.of(new Bench(
                models,
                now,
                margins.ofVersion(now.version().id(), null, 1),
                occasions(model.id(), strip),
                good,
                good == null ? null : margins.ofVersion(good.version().id(), null, 1),
                sheetId == null
                        ? null
                        : logbook.read(r -> Optional.ofNullable(r.find(ClassSheet.class, sheetId)))
                                .orElse(null)));
    }

    private List<Occasion> occasions(String modelId, List<Rigged> strip) {
        Map<String, List<TrimChange>> changes = Riggings.changes(strip);
        Map<String, Integer> flights = logbook.read(r -> r.flights().countsByRigging(modelId));
        List<String> seen = new ArrayList<>();
        List<Occasion> occasions = new ArrayList<>();
        for (Rigged rigged : strip) {
            String id = rigged.rigging() == null ? "" : rigged.rigging().id();
            boolean before = seen.contains(rigged.version().id());
            occasions.add(
                    new Occasion(rigged, changes.getOrDefault(id, List.of()), flights.getOrDefault(id, 0), before));
            seen.add(rigged.version().id());
        }
        Collections.reverse(occasions);
        return occasions;
    }

    /** A trim that is only looked at: the airframe it gives and its margin. */
    public record Preview(@Nullable Airframe airframe, MarginAnswer margin) {}

    /** What these settings would give on the version on the bench. */
    public Preview preview(Rigged now, Map<String, Setting> changed) {
        Airframe geometry = now.geometry();
        if (geometry == null) {
            return new Preview(null, margins.ofVersion(now.version().id(), null, 1));
        }
        Map<String, Setting> values = new HashMap<>(now.values());
        values.putAll(changed);
        Airframe edited = VersionBook.applied(now.settings(), values, geometry);
        return new Preview(edited, margins.edited(now.version().id(), edited));
    }

    /** Marks a version as well-behaved, or takes the mark away. */
    public void mark(String versionId, boolean good) {
        logbook.enter(
                good ? "marked well-behaved" : "mark taken away",
                w -> w.update(w.get(Version.class, versionId).withMark(good)));
    }
}
