package org.rafterbook.ui.bench;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.ui.kit.SettingWords;
import org.rafterbook.work.Rigged;

/** Settings turned away from where a version has them, not kept yet. */
final class TurnedSettings {

    private final Map<String, Setting> changed = new HashMap<>();

    /** Turns a setting; back to where the version has it is no change. */
    void set(Rigged version, SettingDef setting, Setting value) {
        Setting before = version.values().get(setting.id());
        if (before != null && before.same(value, 0)) {
            changed.remove(setting.id());
        } else {
            changed.put(setting.id(), value);
        }
    }

    void setAll(Map<String, Setting> values) {
        changed.putAll(values);
    }

    void clear() {
        changed.clear();
    }

    boolean any() {
        return !changed.isEmpty();
    }

    boolean holds(SettingDef setting) {
        return changed.containsKey(setting.id());
    }

    /** What a setting stands at as turned, else as the version has it. */
    @Nullable
    Setting value(Rigged version, SettingDef setting) {
        Setting turned = changed.get(setting.id());
        return turned == null ? version.values().get(setting.id()) : turned;
    }

    /** The turned ones by setting id, as they are now. */
    Map<String, Setting> values() {
        return Map.copyOf(changed);
    }

    /** What was turned, in the words undo will say. */
    String words(Rigged version) {
        return version.settings().stream()
                .filter(this::holds)
                .map(s -> s.label() + " " + SettingWords.value(s, changed.get(s.id())))
                .reduce((a, b) -> a + ", " + b)
                .orElse("trim");
    }

    /** The value, or the end of the slider it lies beyond. */
    static double within(SettingDef setting, double value) {
        Double low = setting.low();
        Double high = setting.high();
        double least = low == null ? value : Math.max(low, value);
        return high == null ? least : Math.min(high, least);
    }
}
