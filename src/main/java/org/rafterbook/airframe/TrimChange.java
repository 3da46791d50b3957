package org.rafterbook.airframe;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One setting that differs between a rigging and the one before it.
 *
 * @param from null where the setting was not recorded before
 * @param to null where it is not recorded any more
 */
public record TrimChange(
        SettingDef setting,
        @Nullable Setting from,
        @Nullable Setting to) {

    /** The settings that differ, in the order of the definitions; values are keyed by setting id. */
    public static List<TrimChange> between(
            List<SettingDef> settings, Map<String, Setting> before, Map<String, Setting> after) {
        List<TrimChange> changes = new ArrayList<>();
        for (SettingDef def : settings) {
            Setting from = before.get(def.id());
            Setting to = after.get(def.id());
            if (from == null && to == null) {
                continue;
            }
            if (from == null || to == null || !from.same(to, 0)) {
                changes.add(new TrimChange(def, from, to));
            }
        }
        return changes;
    }
}
