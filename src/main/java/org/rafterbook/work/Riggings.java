package org.rafterbook.work;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.flight.Flight;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.UserError;

/** Models and how they are rigged: the one place where trim changes are made. */
public final class Riggings {

    private final Logbook logbook;
    private final Clock clock;

    Riggings(Logbook logbook, Clock clock) {
        this.logbook = logbook;
        this.clock = clock;
    }

    /** Every model, by name. */
    public List<Model> models() {
        return logbook.read(r -> r.all(Model.class).stream()
                .sorted(Comparator.comparing(Model::name, String.CASE_INSENSITIVE_ORDER))
                .toList());
    }

    /** Adds a model that has only a name; it can fly at once. */
    public Model addModel(String name) {
        return logbook.enter("model " + name.strip(), w -> addModel(w, name));
    }

    Model addModel(Writer writer, String name) {
        String trimmed = name.strip();
        if (trimmed.isEmpty()) {
            throw UserError.badInput("A model needs a name.");
        }
        if (writer.all(Model.class).stream().anyMatch(m -> m.name().equalsIgnoreCase(trimmed))) {
            throw UserError.badInput("There is a model named '" + trimmed + "' already.");
        }
        Model model = writer.insert(new Model(Logbook.newId(), trimmed, letterOf(trimmed), 1, null, null, null, null));
        VersionBook versions = new VersionBook(writer, model, clock);
        Version first = versions.findOrMake(writer, Map.of(), null, false);
        begin(writer, model, first, "as built", null);
        return model;
    }

    /** Versions are counted v1, v2 ..., or with the model's own initial where that is a letter. */
    static String letterOf(String name) {
        char initial = Character.toLowerCase(name.charAt(0));
        return initial >= 'a' && initial <= 'z' ? String.valueOf(initial) : "v";
    }

    /** How the model is rigged now. */
    public Rigged now(String modelId) {
        return logbook.read(r -> now(r, modelId));
    }

    static Rigged now(Reader reader, String modelId) {
        Model model = reader.get(Model.class, modelId);
        Rigging last = last(reader, modelId);
        return rigged(reader, model, last, reader.get(Version.class, last.versionId()));
    }

    /** A version with its settings and geometry, without an occasion. */
    public Rigged version(String versionId) {
        return logbook.read(r -> {
            Version version = r.get(Version.class, versionId);
            return rigged(r, r.get(Model.class, version.modelId()), null, version);
        });
    }

    /** Every rigging of the model with its version, oldest first. */
    public List<Rigged> strip(String modelId) {
        return logbook.read(r -> {
            Model model = r.get(Model.class, modelId);
            VersionBook versions = new VersionBook(r, model, clock);
            Map<String, Version> byId = new HashMap<>();
            r.where(Version.class, "modelId", modelId).forEach(v -> byId.put(v.id(), v));
            List<Rigged> strip = new ArrayList<>();
            for (Rigging rigging : ordered(r, modelId)) {
                Version version = byId.get(rigging.versionId());
                if (version != null) {
                    strip.add(new Rigged(model, versions.settings(), rigging, version, versions.valuesOf(version)));
                }
            }
            return strip;
        });
    }

    /** Versions of the model that were only sketched, newest first. */
    public List<Rigged> sketches(String modelId) {
        return logbook.read(r -> r.where(Version.class, "modelId", modelId).stream()
                .filter(Version::sketch)
                .sorted(Comparator.comparingInt(Version::number).reversed())
                .map(v -> rigged(r, r.get(Model.class, modelId), null, v))
                .toList());
    }

    static Rigged rigged(Reader reader, Model model, @Nullable Rigging rigging, Version version) {
        return new Rigged(
                model, VersionBook.definitions(reader, model.id()), rigging, version, values(reader, version));
    }

    /** What a version's settings stand at, keyed by setting id. */
    static Map<String, Setting> values(Reader reader, Version version) {
        Map<String, Setting> values = new HashMap<>();
        reader.where(SettingValue.class, "versionId", version.id())
                .forEach(v -> values.put(v.settingId(), new Setting(v.number(), v.word(), v.asTyped())));
        return values;
    }

    static List<Rigging> ordered(Reader reader, String modelId) {
        return reader.where(Rigging.class, "modelId", modelId).stream()
                .sorted(Comparator.comparingInt(Rigging::ordinal))
                .toList();
    }

    static Rigging last(Reader reader, String modelId) {
        List<Rigging> all = ordered(reader, modelId);
        return all.get(all.size() - 1);
    }

    /** A setting of the flyer's own, with a letter dealt to it. */
    public SettingDef addSetting(
            String modelId,
            String label,
            String quantity,
            String unit,
            @Nullable Double step,
            @Nullable Double tolerance,
            @Nullable String path) {
        return logbook.enter(
                "setting " + label, w -> NewSetting.add(w, modelId, label, quantity, unit, step, tolerance, path));
    }

    /**
     * Sets the model to other settings: its next flight flies on them. A rigging that has not flown yet is changed
     * itself; going back to the rigging before it takes the unflown one away.
     *
     * @param changed new values keyed by setting id; the others stay
     * @param why the words undo will say
     */
    public Rigged trim(String modelId, Map<String, Setting> changed, String why, @Nullable String trialId) {
        return logbook.enter(why, w -> {
            Rigged before = now(w, modelId);
            Map<String, Setting> values = changed(before, changed);
            return set(w, before.model(), values, before.geometry(), why, trialId);
        });
    }

    /** Sets the model to a version it has flown before or that was sketched. */
    public Rigged backTo(String versionId, String why, @Nullable String trialId) {
        return from(versionId, Map.of(), why, trialId);
    }

    /**
     * Sets the model to a version it has flown before or that was sketched, with some settings changed.
     *
     * @param changed new values keyed by setting id
     */
    public Rigged from(String versionId, Map<String, Setting> changed, String why, @Nullable String trialId) {
        return logbook.enter(why, w -> {
            Version version = w.get(Version.class, versionId);
            Rigged there = rigged(w, w.get(Model.class, version.modelId()), null, version);
            Map<String, Setting> values = changed(there, changed);
            return set(w, there.model(), values, there.geometry(), why, trialId);
        });
    }

    /**
     * Makes a version that is only looked at and compared; it flies when it is taken to the Hall.
     *
     * @param versionId what it starts from; may be a sketch itself
     * @param geometry null for that version's own
     */
    public Rigged sketch(String versionId, Map<String, Setting> changed, @Nullable Airframe geometry) {
        return logbook.enter("sketch", w -> {
            Version version = w.get(Version.class, versionId);
            Rigged there = rigged(w, w.get(Model.class, version.modelId()), null, version);
            return sketch(w, there, changed, geometry);
        });
    }

    private Rigged sketch(Writer w, Rigged from, Map<String, Setting> changed, @Nullable Airframe geometry) {
        Map<String, Setting> values = changed(from, changed);
        Version version = new VersionBook(w, from.model(), clock)
                .findOrMake(w, values, geometry == null ? from.geometry() : geometry, true);
        return rigged(w, from.model(), null, version);
    }

    /** The settings as changed; what the airframe lacks cannot be changed, or a version would differ by nothing. */
    private static Map<String, Setting> changed(Rigged from, Map<String, Setting> changed) {
        List<SettingDef> own = from.ownSettings();
        for (SettingDef setting : from.settings()) {
            if (changed.containsKey(setting.id()) && !own.contains(setting)) {
                throw UserError.badInput("The airframe of " + from.name() + " has nothing that " + setting.label()
                        + " could be set on.");
            }
        }
        Map<String, Setting> values = new HashMap<>(from.values());
        values.putAll(changed);
        return values;
    }

    /** Takes a sketch that never flew away. */
    public void dropSketch(String versionId) {
        logbook.change("sketch taken away", w -> {
            Version version = w.get(Version.class, versionId);
            if (!version.sketch()) {
                throw UserError.badInput("That version has flown; it stays.");
            }
            if (!w.where(Weighing.class, "versionId", versionId).isEmpty()) {
                throw UserError.badInput("That version was weighed; take its weighing away first.");
            }
            forget(w, versionId);
        });
    }

    Rigged set(
            Writer writer,
            Model model,
            Map<String, Setting> values,
            @Nullable Airframe geometry,
            String why,
            @Nullable String trialId) {
        VersionBook versions = new VersionBook(writer, model, clock);
        Version version = versions.findOrMake(writer, values, geometry, false);
        List<Rigging> all = ordered(writer, model.id());
        Rigging last = all.isEmpty() ? null : all.get(all.size() - 1);
        if (last == null) {
            begin(writer, model, version, why, trialId);
        } else if (!last.versionId().equals(version.id()) || !Objects.equals(last.trialId(), trialId)) {
            boolean flown = !writer.where(Flight.class, "riggingId", last.id()).isEmpty();
            if (flown) {
                begin(writer, model, version, why, trialId);
            } else {
                reset(writer, all, last, version, why, trialId);
            }
        }
        return now(writer, model.id());
    }

    private void begin(Writer writer, Model model, Version version, String why, @Nullable String trialId) {
        List<Rigging> all = ordered(writer, model.id());
        Rigging last = all.isEmpty() ? null : all.get(all.size() - 1);
        writer.insert(new Rigging(
                Logbook.newId(),
                model.id(),
                last == null ? 1 : last.ordinal() + 1,
                version.id(),
                last == null ? null : last.id(),
                clock.instant(),
                why,
                trialId));
    }

    /** Changes a rigging that has not flown; a version it leaves behind unflown goes with it. */
    private void reset(
            Writer writer, List<Rigging> all, Rigging last, Version version, String why, @Nullable String trialId) {
        String left = last.versionId();
        Rigging before = all.size() > 1 ? all.get(all.size() - 2) : null;
        if (before != null && before.versionId().equals(version.id()) && Objects.equals(before.trialId(), trialId)) {
            writer.remove(Rigging.class, last.id());
        } else {
            writer.update(new Rigging(
                    last.id(),
                    last.modelId(),
                    last.ordinal(),
                    version.id(),
                    last.previousId(),
                    clock.instant(),
                    why,
                    trialId));
        }
        if (!left.equals(version.id())) {
            forgetIfUnused(writer, left);
        }
    }

    /** Takes a version away that no rigging needs; where something was measured or said of it, it stays as a sketch. */
    static void forgetIfUnused(Writer writer, String versionId) {
        Version version = writer.find(Version.class, versionId);
        if (version == null
                || version.sketch()
                || !writer.where(Rigging.class, "versionId", versionId).isEmpty()) {
            return;
        }
        if (version.markedGood()
                || version.zeroShiftM() != null
                || version.ownNeutralPointM() != null
                || !writer.where(Weighing.class, "versionId", versionId).isEmpty()) {
            writer.update(version.asSketch());
        } else {
            forget(writer, versionId);
        }
    }

    private static void forget(Writer writer, String versionId) {
        writer.where(SettingValue.class, "versionId", versionId)
                .forEach(v -> writer.remove(SettingValue.class, v.id()));
        writer.remove(Version.class, versionId);
    }

    /** What changed at each rigging of the strip, keyed by rigging id; the first has no change. */
    public static Map<String, List<TrimChange>> changes(List<Rigged> strip) {
        Map<String, List<TrimChange>> changes = new HashMap<>();
        for (int i = 0; i < strip.size(); i++) {
            Rigged now = strip.get(i);
            Rigging rigging = now.rigging();
            if (rigging != null) {
                changes.put(
                        rigging.id(),
                        i == 0
                                ? List.of()
                                : TrimChange.between(
                                        now.settings(), strip.get(i - 1).values(), now.values()));
            }
        }
        return changes;
    }
}
