package org.rafterbook.ui.kit;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.units.Parsed;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.Unit;
import org.rafterbook.work.SettingInput;

/** Settings in words: values and steps in the setting's own unit, changes, and what is typed for one. */
public final class SettingWords {

    /** Beyond the fifth decimal a shown number is arithmetic noise. */
    private static final double NOISE = 1e5;

    private SettingWords() {}

    /** The unit a setting is shown in; null for one that is a word. */
    public static @Nullable Unit unit(SettingDef setting) {
        return SettingInput.unit(setting);
    }

    /** The value in the setting's unit, or the word. */
    public static String value(SettingDef setting, @Nullable Setting value) {
        Double number = value == null ? null : value.number();
        Unit unit = unit(setting);
        if (value == null) {
            return QuantityFormat.UNKNOWN;
        }
        if (number == null) {
            return Objects.requireNonNullElse(value.word(), QuantityFormat.UNKNOWN);
        }
        return unit == null ? String.valueOf(number) : inUnit(number, unit);
    }

    /** A number in a unit without the noise that arithmetic leaves behind its digits. */
    public static String inUnit(double si, Unit unit) {
        return QuantityFormat.inUnit(unit.toSi(Math.rint(unit.fromSi(si) * NOISE) / NOISE), unit);
    }

    /** The setting's usual step, such as "step 0.25°". */
    public static String step(SettingDef setting) {
        Double step = setting.step();
        Unit unit = unit(setting);
        return step == null || unit == null ? "" : "step " + inUnit(step, unit);
    }

    /** What changed, such as "Wing position 146 mm, was 149 mm". */
    public static String change(TrimChange change) {
        String from = change.from() == null ? "" : ", was " + value(change.setting(), change.from());
        return change.setting().label() + " " + value(change.setting(), change.to()) + from;
    }

    /** Reads what is typed for a setting: a number in its unit or any other of its kind, or a word. */
    public static Parsed<Setting> read(SettingDef setting, String typed) {
        return SettingInput.read(setting, typed);
    }

    /** A field for one value of a setting. */
    public static Field<Setting> field(String label, SettingDef setting) {
        Unit unit = unit(setting);
        if (unit == null) {
            return Field.text(label, typed -> read(setting, typed));
        }
        return Field.<Setting>number(label, typed -> read(setting, typed))
                .unit(unit.symbol())
                .also(value -> {
                    String typed = value.asTyped();
                    boolean other = typed != null && typed.chars().anyMatch(Character::isLetter);
                    return other ? "= " + value(setting, value) : "";
                });
    }
}
