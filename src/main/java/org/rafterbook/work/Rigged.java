package org.rafterbook.work;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.Version;

/**
 * How a model is or was rigged: version, settings and geometry together.
 *
 * @param settings the model's settings in the order they are listed
 * @param rigging null for a version looked at without an occasion
 * @param values what the settings stand at, keyed by setting id; settings not recorded are absent
 */
public record Rigged(
        Model model,
        List<SettingDef> settings,
        @Nullable Rigging rigging,
        Version version,
        Map<String, Setting> values) {

    public Rigged {
        settings = List.copyOf(settings);
        values = Map.copyOf(values);
    }

    /** The airframe, null where the model has none. */
    public @Nullable Airframe geometry() {
        return Geometry.of(version);
    }

    /** The settings this version has: not those tied to what its airframe lacks, such as a wing taken off. */
    public List<SettingDef> ownSettings() {
        Airframe geometry = geometry();
        return geometry == null
                ? settings
                : settings.stream().filter(s -> isOn(s, geometry)).toList();
    }

    private static boolean isOn(SettingDef setting, Airframe geometry) {
        SheetPath path = setting.path() == null ? null : SheetPath.parse(setting.path());
        return path == null || path.isIn(geometry);
    }

    /** The version's name, such as v13. */
    public String name() {
        return model.letter() + version.number();
    }
}
