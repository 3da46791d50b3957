package org.rafterbook.work;

import java.time.Clock;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeProblem;
import org.rafterbook.airframe.AirframeProblems;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Trial;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.UserError;

/** Surfaces, masses and the motor's place of a model, as they are entered on the Bench. */
public final class Airframes {

    /** Whether an entry puts right what was recorded or tells of a change of the airframe itself. */
    public enum Since {
        /** Every version that carries the old value gets the new one; flights stay where they are. */
        ALWAYS,
        /** The model is set to a new version. */
        NOW
    }

    private final Logbook logbook;
    private final Clock clock;
    private final Riggings riggings;

    Airframes(Logbook logbook, Clock clock, Riggings riggings) {
        this.logbook = logbook;
        this.clock = clock;
        this.riggings = riggings;
    }

    /**
     * Adds a surface (null before), puts another in its place, or takes it away (null after). A sketch is changed itself;
     * a model that has not flown is put right without a new version. Another name is put right in every version.
     *
     * @return the version as it then is
     */
    public Rigged surface(String versionId, @Nullable Surface before, @Nullable Surface after, Since since) {
        if (after != null) {
            for (AirframeProblem problem : AirframeProblems.of(after)) {
                throw UserError.badInput(problem.sentence());
            }
        }
        return before != null && after != null && !before.name().equals(after.name())
                ? renamed(versionId, before, after, since)
                : enter(versionId, new AirframeEdit.OfSurface(before, after), before == null, after == null, since);
    }

    private Rigged renamed(String versionId, Surface before, Surface after, Since since) {
        return logbook.enter(before.name() + " renamed to " + after.name(), w -> {
            Model model = w.get(Model.class, w.get(Version.class, versionId).modelId());
            new Renaming(w, model, before.name(), after.name()).make();
            Version version = w.get(Version.class, versionId);
            Surface named = before.named(after.name());
            if (!named.equals(after)) {
                return edit(w, version, new AirframeEdit.OfSurface(named, after), since);
            }
            return version.sketch() ? Riggings.rigged(w, model, null, version) : Riggings.now(w, model.id());
        });
    }

    /** Adds a mass, puts another in its place, or takes it away; a shared part's mass changes in its other models too. */
    public Rigged mass(String versionId, @Nullable MassItem before, @Nullable MassItem after, Since since) {
        return logbook.enter(why(before, after), w -> mass(w, versionId, before, after, since));
    }

    Rigged mass(Writer w, String versionId, @Nullable MassItem before, @Nullable MassItem after, Since since) {
        Version version = w.get(Version.class, versionId);
        Airframe geometry = Geometry.of(version);
        String name = before != null ? before.name() : after == null ? "" : after.name();
        Surface carrier = geometry == null ? null : AirframeEdit.surface(geometry, name);
        Rigged done = edit(w, version, new AirframeEdit.OfMass(before, after, carrier), since);
        if (before != null && after != null && before.massKg() != after.massKg()) {
            Parts.elsewhere(w, version.modelId(), name, after.massKg())
                    .forEach((model, item) -> massOf(w, model, item, after.massKg(), since));
        }
        return done;
    }

    static String why(@Nullable MassItem before, @Nullable MassItem after) {
        return "mass of " + (before != null ? before.name() : after == null ? "" : after.name());
    }

    /** Sets the mass of one item of a model as it is rigged now. */
    void massOf(Writer writer, String modelId, String item, double massKg, Since since) {
        Rigged now = Riggings.now(writer, modelId);
        Airframe geometry = now.geometry();
        MassItem there = geometry == null ? null : AirframeEdit.mass(geometry, item);
        if (there != null && there.massKg() != massKg) {
            MassItem after = new MassItem(item, massKg, there.aftM(), there.riseM());
            edit(writer, now.version(), new AirframeEdit.OfMass(there, after, null), since);
        }
    }

    /** Where the motor lies and what a usual one weighs; no version differs by it. */
    public void motor(String modelId, @Nullable MotorPlace motor) {
        logbook.change("place of the motor", w -> {
            Model model = w.get(Model.class, modelId);
            for (Version version : w.where(Version.class, "modelId", modelId)) {
                Airframe geometry = Geometry.of(version);
                if (geometry != null) {
                    Airframe set =
                            new Airframe(geometry.surfaces(), geometry.masses(), geometry.measuredBalanceM(), motor);
                    w.update(version.withGeometry(
                            version.digest(), Geometry.write(model.name(), model.letter() + version.number(), set)));
                }
            }
        });
    }

    private Rigged enter(String versionId, AirframeEdit edit, boolean added, boolean gone, Since since) {
        return logbook.enter(edit.why(added, gone), w -> edit(w, w.get(Version.class, versionId), edit, since));
    }

    private Rigged edit(Writer writer, Version version, AirframeEdit edit, Since since) {
        Model model = writer.get(Model.class, version.modelId());
        Airframe geometry = Geometry.of(version);
        Airframe base = geometry == null ? new Airframe(List.of(), List.of(), null, null) : geometry;
        if (!edit.carriedBy(base, tied(writer, model.id(), edit))) {
            boolean added =
                    edit.was().surfaces().isEmpty() && edit.was().masses().isEmpty();
            throw UserError.badInput(
                    added
                            ? "There is something named \"" + edit.item() + "\" already."
                            : "\"" + edit.item() + "\" was changed meanwhile: leave the form and open it again.");
        }
        if (version.sketch()) {
            lay(writer, model, version, base, edit);
            deal(writer, model, writer.find(Version.class, version.id()));
        } else if (since == Since.NOW && flown(writer, model.id())) {
            return fromNowOn(writer, model, version, base, edit);
        } else {
            layOnAll(writer, model, edit);
        }
        Version done = writer.find(Version.class, version.id());
        return done == null || !done.sketch()
                ? Riggings.now(writer, model.id())
                : Riggings.rigged(writer, model, null, done);
    }

    private static boolean flown(Reader reader, String modelId) {
        return !reader.flights().countsByVersion(modelId).isEmpty();
    }

    private Rigged fromNowOn(Writer writer, Model model, Version version, Airframe base, AirframeEdit edit) {
        Airframe edited = edit.laidOn(base, Set.of());
        Sheets.dealSettings(writer, model, edited);
        Rigged now = Riggings.rigged(writer, model, null, version);
        return riggings.set(writer, model, valuesOn(writer, now, edited), edited, edit.item() + " changed", null);
    }

    /** The settings as this geometry has them; those of what it lacks are gone. */
    static Map<String, Setting> valuesOn(Reader reader, Rigged rigged, Airframe geometry) {
        Map<String, Setting> values = new HashMap<>(rigged.values());
        for (SettingDef def : VersionBook.definitions(reader, rigged.model().id())) {
            SheetPath path = def.path() == null ? null : SheetPath.parse(def.path());
            if (path != null && path.isIn(geometry)) {
                Setting stands = values.get(def.id());
                Setting read = Setting.of(path.read(geometry));
                values.put(def.id(), stands != null && stands.same(read, 0) ? stands : read);
            } else if (path != null) {
                values.remove(def.id());
            }
        }
        return values;
    }

    private static void layOnAll(Writer writer, Model model, AirframeEdit edit) {
        putTrialsRight(writer, model, edit);
        boolean any =
                writer.where(Version.class, "modelId", model.id()).stream().anyMatch(v -> v.geometry() != null);
        for (Version version : writer.where(Version.class, "modelId", model.id())) {
            Airframe geometry = Geometry.of(version);
            Airframe base = geometry == null && !any ? new Airframe(List.of(), List.of(), null, null) : geometry;
            if (base != null && edit.carriedBy(base, tied(writer, model.id(), edit))) {
                lay(writer, model, version, base, edit);
            }
        }
        deal(writer, model, Riggings.now(writer, model.id()).version());
        forgetUnused(writer, model.id());
    }

    /** The trial of a setting whose value is put right with its surface or mass compares the right one. */
    private static void putTrialsRight(Writer writer, Model model, AirframeEdit edit) {
        for (SettingDef def : VersionBook.definitions(writer, model.id())) {
            SheetPath path = def.path() == null ? null : SheetPath.parse(def.path());
            if (path != null
                    && path.isIn(edit.was())
                    && path.isIn(edit.becomes())
                    && path.read(edit.was()) != path.read(edit.becomes())) {
                Corrections.putTrialsRight(
                        writer, def, Setting.of(path.read(edit.was())), Setting.of(path.read(edit.becomes())));
            }
        }
    }

    private static void deal(Writer writer, Model model, @Nullable Version version) {
        Airframe geometry = version == null ? null : Geometry.of(version);
        if (geometry != null) {
            Sheets.dealSettings(writer, model, geometry);
        }
    }

    private static void lay(Writer writer, Model model, Version version, Airframe base, AirframeEdit edit) {
        Airframe edited = edit.laidOn(base, tied(writer, model.id(), edit));
        Rigged then = Riggings.rigged(writer, model, null, version);
        Map<String, Setting> values = valuesOn(writer, then, edited);
        for (SettingValue value : writer.where(SettingValue.class, "versionId", version.id())) {
            Setting now = values.get(value.settingId());
            if (now == null) {
                writer.remove(SettingValue.class, value.id());
            } else {
                writer.update(new SettingValue(
                        value.id(), version.id(), value.settingId(), now.number(), now.word(), now.asTyped()));
            }
        }
        for (Map.Entry<String, Setting> value : values.entrySet()) {
            if (!then.values().containsKey(value.getKey())) {
                Setting set = value.getValue();
                writer.insert(new SettingValue(
                        Logbook.newId(), version.id(), value.getKey(), set.number(), set.word(), set.asTyped()));
            }
        }
        Corrections.rebuild(writer, model, VersionBook.definitions(writer, model.id()), version, values, edited);
    }

    /** Settings tied to what no version has any more are taken away with it. */
    private static void forgetUnused(Writer writer, String modelId) {
        for (SettingDef def : VersionBook.definitions(writer, modelId)) {
            if (def.path() != null
                    && writer.where(SettingValue.class, "settingId", def.id()).isEmpty()
                    && writer.where(Version.class, "modelId", modelId).stream().anyMatch(v -> v.geometry() != null)) {
                Trial open = TrialReading.openOf(writer, modelId);
                if (open != null && open.settingId().equals(def.id())) {
                    throw UserError.badInput(
                            "The open trial compares two values of " + def.label() + ". End the trial first.");
                }
                writer.remove(SettingDef.class, def.id());
            }
        }
    }

    /** The keys of the item that settings choose. */
    private static Set<SheetPath.Key> tied(Reader reader, String modelId, AirframeEdit edit) {
        Set<SheetPath.Key> keys = EnumSet.noneOf(SheetPath.Key.class);
        for (SettingDef def : VersionBook.definitions(reader, modelId)) {
            SheetPath path = def.path() == null ? null : SheetPath.parse(def.path());
            if (path != null && path.item().equals(edit.item())) {
                keys.add(path.key());
            }
        }
        return keys;
    }
}
