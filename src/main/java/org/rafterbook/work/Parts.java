package org.rafterbook.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Part;
import org.rafterbook.airframe.PartUse;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.UserError;

/** Parts that serve several models: a mass that is one and the same piece has one mass in all of them. */
public final class Parts {

    private final Logbook logbook;
    private final Airframes airframes;

    Parts(Logbook logbook, Airframes airframes) {
        this.logbook = logbook;
        this.airframes = airframes;
    }

    /** A mass of another model. */
    public record Elsewhere(Model model, MassItem mass) {}

    /** The masses of all other models, as they are rigged now. */
    public List<Elsewhere> elsewhere(String modelId) {
        return logbook.read(r -> {
            List<Elsewhere> found = new ArrayList<>();
            for (Model model : r.all(Model.class)) {
                Airframe geometry = model.id().equals(modelId)
                        ? null
                        : Riggings.now(r, model.id()).geometry();
                if (geometry != null) {
                    geometry.masses().forEach(m -> found.add(new Elsewhere(model, m)));
                }
            }
            return found;
        });
    }

    /** Which other models use each mass of this one, by the mass's name; those of one model alone are absent. */
    public Map<String, List<String>> shared(String modelId) {
        return logbook.read(r -> {
            Map<String, List<String>> shared = new LinkedHashMap<>();
            for (PartUse use : r.where(PartUse.class, "modelId", modelId)) {
                List<String> others = r.where(PartUse.class, "partId", use.partId()).stream()
                        .filter(u -> !u.modelId().equals(modelId))
                        .map(u -> r.get(Model.class, u.modelId()).name())
                        .toList();
                if (!others.isEmpty()) {
                    shared.put(r.get(Part.class, use.partId()).name(), others);
                }
            }
            return shared;
        });
    }

    /**
     * Where else a mass flies.
     *
     * @param said false leaves it as it is
     * @param otherModelId model that flies with the very piece, null for a piece of this model alone
     */
    public record Sharing(boolean said, @Nullable String otherModelId) {

        /** Nothing is said of it. */
        public static final Sharing AS_IT_IS = new Sharing(false, null);
    }

    /** Adds a mass or puts another in its place, and says in the same entry where else it flies. */
    public Rigged mass(
            String versionId, @Nullable MassItem before, MassItem after, Airframes.Since since, Sharing sharing) {
        return logbook.enter(Airframes.why(before, after), w -> {
            Rigged done = airframes.mass(w, versionId, before, after, since);
            String modelId = done.model().id();
            String other = sharing.otherModelId();
            Part mine = part(w, modelId, after.name());
            Part theirs = other == null ? null : part(w, other, after.name());
            if (sharing.said() && (mine == null || !mine.equals(theirs))) {
                unshare(w, modelId, after.name());
                if (other != null) {
                    share(w, modelId, after.name(), other);
                }
            }
            return done.version().sketch() ? done : Riggings.now(w, modelId);
        });
    }

    /**
     * Notes that a mass of one model is the very piece that another model flies with under the same name; it takes that
     * model's mass.
     */
    public void share(String modelId, String item, String otherModelId) {
        logbook.change(item + " shared", w -> share(w, modelId, item, otherModelId));
    }

    private void share(Writer w, String modelId, String item, String otherModelId) {
        MassItem mine = massNow(w, modelId, item);
        MassItem theirs = massNow(w, otherModelId, item);
        if (mine == null || theirs == null) {
            throw UserError.badInput("Both models need a mass named \"" + item + "\".");
        }
        Part part = part(w, otherModelId, item);
        if (part == null) {
            part = w.insert(new Part(Logbook.newId(), item, theirs.massKg(), null, Map.of()));
            use(w, part, otherModelId, theirs);
        }
        Part known = part;
        boolean already = w.where(PartUse.class, "partId", known.id()).stream()
                .anyMatch(u -> u.modelId().equals(modelId));
        if (!already) {
            use(w, known, modelId, mine);
        }
        airframes.massOf(w, modelId, item, theirs.massKg(), Airframes.Since.ALWAYS);
    }

    /** Notes that a mass is a piece of this model's own again. */
    public void unshare(String modelId, String item) {
        logbook.change(item + " no longer shared", w -> unshare(w, modelId, item));
    }

    private static void unshare(Writer w, String modelId, String item) {
        Part part = part(w, modelId, item);
        if (part != null) {
            w.where(PartUse.class, "partId", part.id()).stream()
                    .filter(u -> u.modelId().equals(modelId))
                    .forEach(u -> w.remove(PartUse.class, u.id()));
        }
    }

    /** Whether a mass of a model flies in another one too. */
    static boolean isShared(Reader reader, String modelId, String item) {
        Part part = part(reader, modelId, item);
        return part != null && reader.where(PartUse.class, "partId", part.id()).size() > 1;
    }

    private static @Nullable MassItem massNow(Reader reader, String modelId, String item) {
        Airframe geometry = Riggings.now(reader, modelId).geometry();
        return geometry == null ? null : AirframeEdit.mass(geometry, item);
    }

    private static void use(Writer writer, Part part, String modelId, MassItem mass) {
        writer.insert(new PartUse(Logbook.newId(), modelId, part.id(), mass.aftM(), mass.riseM()));
    }

    private static @Nullable Part part(Reader reader, String modelId, String item) {
        return reader.where(PartUse.class, "modelId", modelId).stream()
                .map(u -> reader.get(Part.class, u.partId()))
                .filter(p -> p.name().equals(item))
                .findFirst()
                .orElse(null);
    }

    /** Keeps a shared part's new mass and tells where else it flies: model id to the name of the mass there. */
    static Map<String, String> elsewhere(Writer writer, String modelId, String item, double massKg) {
        Map<String, String> others = new HashMap<>();
        Part part = part(writer, modelId, item);
        if (part != null) {
            writer.update(new Part(part.id(), part.name(), massKg, part.notes(), part.asTyped()));
            writer.where(PartUse.class, "partId", part.id()).stream()
                    .map(PartUse::modelId)
                    .filter(id -> !Objects.equals(id, modelId))
                    .forEach(id -> others.put(id, part.name()));
        }
        return others;
    }
}
