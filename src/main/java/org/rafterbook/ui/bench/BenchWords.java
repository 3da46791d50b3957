package org.rafterbook.ui.bench;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;

/** Settings and changes in words. */
final class BenchWords {

    private static final QuantityFormat FORMAT = new QuantityFormat(DisplayUnits.METRIC);

    private BenchWords() {}

    static String value(SettingDef setting, @Nullable Setting value) {
        if (value == null) {
            return QuantityFormat.UNKNOWN;
        }
        Double number = value.number();
        return number == null ? String.valueOf(value.word()) : FORMAT.shortest(quantity(setting), number, 2);
    }

    static Quantity quantity(SettingDef setting) {
        for (Quantity quantity : Quantity.values()) {
            if (quantity.name().equals(setting.quantity())) {
                return quantity;
            }
        }
        return Quantity.PLAIN;
    }

    static String change(TrimChange change) {
        String from = change.from() == null ? "" : ", was " + value(change.setting(), change.from());
        return change.setting().label() + " " + value(change.setting(), change.to()) + from;
    }

    static String percent(@Nullable Double fraction) {
        return fraction == null ? QuantityFormat.UNKNOWN : QuantityFormat.rounded(fraction * 100, 1) + " %";
    }

    static String millimetres(@Nullable Double metres) {
        return metres == null ? QuantityFormat.UNKNOWN : QuantityFormat.rounded(metres * 1000, 1) + " mm";
    }
}
