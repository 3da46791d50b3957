package org.rafterbook.ui.bench;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.units.Unit;

/** What a setting can measure, and the unit it is shown in. */
enum SettingKind {
    LENGTH("a length, mm", "LENGTH", Unit.MM),
    ANGLE("an angle, °", "ANGLE", Unit.DEG),
    MASS("a mass, g", "MASS", Unit.G),
    SHARE("a share, %", "FRACTION", Unit.PERCENT),
    NUMBER("a number", "PLAIN", Unit.ONE),
    WORD("a word", "TEXT", null);

    private final String words;
    private final String quantity;
    private final @Nullable Unit unit;

    SettingKind(String words, String quantity, @Nullable Unit unit) {
        this.words = words;
        this.quantity = quantity;
        this.unit = unit;
    }

    static SettingKind of(SettingDef setting) {
        for (SettingKind kind : values()) {
            if (kind.quantity.equals(setting.quantity())) {
                return kind;
            }
        }
        return WORD;
    }

    String words() {
        return words;
    }

    /** Name of the {@code units.Quantity}; TEXT for words. */
    String quantity() {
        return quantity;
    }

    /** Null for words. */
    @Nullable
    Unit unit() {
        return unit;
    }
}
