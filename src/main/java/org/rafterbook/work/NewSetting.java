package org.rafterbook.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingLetters;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.Version;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.UserError;

/** Adds settings to a model and ties them to keys of its airframe sheet. */
final class NewSetting {

    private NewSetting() {}

    /** Adds a setting with a letter dealt to it. */
    static SettingDef add(
            Writer writer,
            String modelId,
            String label,
            String quantity,
            String unit,
            @Nullable Double step,
            @Nullable Double tolerance,
            @Nullable String path) {
        List<SettingDef> known = VersionBook.definitions(writer, modelId);
        if (known.stream().anyMatch(d -> d.label().equalsIgnoreCase(label.strip()))) {
            throw UserError.badInput("This model has a setting named '" + label.strip() + "' already.");
        }
        List<String> taken = new ArrayList<>();
        known.forEach(d -> {
            if (d.keyLetter() != null) {
                taken.add(d.keyLetter());
            }
        });
        int ordinal = known.stream().mapToInt(SettingDef::ordinal).max().orElse(0) + 1;
        SettingDef def = writer.insert(new SettingDef(
                Logbook.newId(),
                modelId,
                label.strip(),
                quantity,
                unit,
                step,
                tolerance,
                null,
                null,
                SettingLetters.deal(label, taken),
                path,
                ordinal));
        SheetPath tied = path == null ? null : SheetPath.parse(path);
        if (tied != null) {
            tie(writer, modelId, def, tied);
        }
        return def;
    }

    /**
     * A newly tied key is read from the geometry of the versions that have one, so that they stay what they were; where the
     * setting was recorded before it was tied, its value goes into the geometry.
     */
    static void tie(Writer writer, String modelId, SettingDef def, SheetPath path) {
        Model model = writer.get(Model.class, modelId);
        for (Version version : writer.where(Version.class, "modelId", modelId)) {
            Airframe geometry = Geometry.of(version);
            if (geometry == null || !path.isIn(geometry)) {
                continue;
            }
            Map<String, Setting> values = new HashMap<>();
            writer.where(SettingValue.class, "versionId", version.id())
                    .forEach(v -> values.put(v.settingId(), new Setting(v.number(), v.word(), v.asTyped())));
            if (!values.containsKey(def.id())) {
                double stands = path.read(geometry);
                writer.insert(new SettingValue(Logbook.newId(), version.id(), def.id(), stands, null, null));
                values.put(def.id(), Setting.of(stands));
            }
            Corrections.rebuild(writer, model, VersionBook.definitions(writer, modelId), version, values, geometry);
        }
    }
}
