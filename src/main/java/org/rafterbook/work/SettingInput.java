package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.units.Parsed;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.Unit;

/** Reads what was typed for a setting of a model: a quantity in its unit, or words. */
public final class SettingInput {

    private SettingInput() {}

    /** The unit a setting's numbers are shown and typed in, null where it stands at words. */
    public static @Nullable Unit unit(SettingDef def) {
        return def.quantity().equals(ImportSettings.TEXT) ? null : ImportSettings.unitOf(def);
    }

    /** The value, or the sentence that says why it cannot be read. */
    public static Parsed<Setting> read(SettingDef def, String typed) {
        String text = typed.strip();
        Unit unit = unit(def);
        if (text.isEmpty()) {
            return Parsed.refused("A value of " + def.label() + " is needed.");
        }
        return unit == null
                ? Parsed.accepted(Setting.of(text))
                : QuantityParser.typed(Quantity.valueOf(def.quantity()), unit)
                        .read(text)
                        .then(v -> Parsed.accepted(new Setting(v.si(), null, v.asTyped())));
    }
}
