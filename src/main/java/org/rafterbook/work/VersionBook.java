package org.rafterbook.work;

import java.time.Clock;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.VersionDigest;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;

/**
 * The versions of one model within one entry: finds the one that equals given settings or makes it. Keeps what it has
 * read, so that an import of thousands of flights asks the store once.
 */
final class VersionBook {

    private final Model model;
    private final Clock clock;
    private final List<SettingDef> settings;
    private final Map<String, Version> byDigest = new HashMap<>();
    private final Map<String, Map<String, Setting>> values = new HashMap<>();
    private int lastNumber;

    VersionBook(Reader reader, Model model, Clock clock) {
        this.model = model;
        this.clock = clock;
        this.settings = definitions(reader, model.id());
        for (Version version : reader.where(Version.class, "modelId", model.id())) {
            byDigest.put(version.digest(), version);
            lastNumber = Math.max(lastNumber, version.number());
        }
        List<String> ids = byDigest.values().stream().map(Version::id).toList();
        for (SettingValue value : reader.whereIn(SettingValue.class, "versionId", ids)) {
            values.computeIfAbsent(value.versionId(), id -> new HashMap<>())
                    .put(value.settingId(), new Setting(value.number(), value.word(), value.asTyped()));
        }
    }

    /** The settings of a model in the order they are listed. */
    static List<SettingDef> definitions(Reader reader, String modelId) {
        return reader.where(SettingDef.class, "modelId", modelId).stream()
                .sorted(Comparator.comparingInt(SettingDef::ordinal))
                .toList();
    }

    List<SettingDef> settings() {
        return settings;
    }

    Map<String, Setting> valuesOf(Version version) {
        return values.getOrDefault(version.id(), Map.of());
    }

    /**
     * The version with these settings, made where there is none yet.
     *
     * @param wanted settings keyed by setting id; a number within half the tolerance of one this model has flown takes
     *     that value
     * @param geometry the model's geometry, on which the tied settings are set; null where it has none
     */
    Version findOrMake(Writer writer, Map<String, Setting> wanted, @Nullable Airframe geometry, boolean sketch) {
        return findOrMake(writer, model.build(), wanted, geometry, sketch, null);
    }

    /**
     * The version of another build with these settings, see above.
     *
     * @param number the number a new version takes where it is free, null for the next one
     */
    Version findOrMake(
            Writer writer,
            int build,
            Map<String, Setting> wanted,
            @Nullable Airframe geometry,
            boolean sketch,
            @Nullable Integer number) {
        Map<String, Setting> snapped = new HashMap<>();
        for (SettingDef def : settings) {
            Setting value = wanted.get(def.id());
            if (value != null) {
                snapped.put(def.id(), snap(def, value));
            }
        }
        Airframe set = geometry == null ? null : applied(settings, snapped, geometry);
        String digest = VersionDigest.of(model.id(), build, settings, snapped, set);
        Version known = byDigest.get(digest);
        if (known != null) {
            return known.sketch() && !sketch ? keep(writer.update(known.taken())) : known;
        }
        int given = number != null && isFree(number) ? number : lastNumber + 1;
        lastNumber = Math.max(lastNumber, given);
        Version made = writer.insert(new Version(
                Logbook.newId(),
                model.id(),
                build,
                given,
                digest,
                set == null ? null : Geometry.write(model.name(), model.letter() + given, set),
                false,
                null,
                null,
                null,
                sketch,
                clock.instant()));
        for (Map.Entry<String, Setting> entry : snapped.entrySet()) {
            Setting value = entry.getValue();
            writer.insert(new SettingValue(
                    Logbook.newId(), made.id(), entry.getKey(), value.number(), value.word(), value.asTyped()));
        }
        values.put(made.id(), snapped);
        return keep(made);
    }

    private boolean isFree(int number) {
        return byDigest.values().stream().noneMatch(v -> v.number() == number);
    }

    private Version keep(Version version) {
        byDigest.put(version.digest(), version);
        return version;
    }

    /** What a version made with this value would stand at: a value within half the tolerance that is known already. */
    Setting snap(SettingDef def, Setting value) {
        Double tolerance = def.tolerance();
        if (value.number() == null || tolerance == null) {
            return value;
        }
        double best = Double.POSITIVE_INFINITY;
        Setting nearest = value;
        for (Map<String, Setting> flown : values.values()) {
            Setting other = flown.get(def.id());
            if (other != null && other.number() != null && other.same(value, tolerance)) {
                double apart = Math.abs(other.number() - value.number());
                if (apart < best) {
                    best = apart;
                    nearest = new Setting(other.number(), null, value.asTyped());
                }
            }
        }
        return nearest;
    }

    /** The geometry with each tied setting set to its value. */
    static Airframe applied(List<SettingDef> settings, Map<String, Setting> values, Airframe geometry) {
        Airframe set = geometry;
        for (SettingDef def : settings) {
            Setting value = values.get(def.id());
            SheetPath path = def.path() == null ? null : SheetPath.parse(def.path());
            if (path != null && value != null && value.number() != null && path.isIn(set)) {
                set = path.set(set, value.number());
            }
        }
        return set;
    }
}
