package org.rafterbook.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.review.Level;
import org.rafterbook.review.SettingInfo;
import org.rafterbook.units.Dimension;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.Unit;

/** Settings as the review takes them: keyed by their definition, numbers in the unit the flyer sees. */
final class ReviewLevels {

    /** Points of margin by which another motor moves it without anybody having chosen so. */
    private static final double SAME_MARGIN = 0.5;

    private ReviewLevels() {}

    static SettingInfo info(SettingDef def) {
        return new SettingInfo(
                def.id(),
                def.label(),
                def.unit(),
                shown(def, def.step()),
                shown(def, def.tolerance()),
                shown(def, def.low()),
                shown(def, def.high()));
    }

    /** The stability margin as what times are drawn against; the range the flyer wishes is its range. */
    static SettingInfo margin(Model model) {
        Double low = model.wishedLow();
        Double high = model.wishedHigh();
        return new SettingInfo(
                "",
                "stability margin",
                "%",
                null,
                SAME_MARGIN,
                low == null ? null : Double.valueOf(100 * low),
                high == null ? null : Double.valueOf(100 * high));
    }

    /** The values a version stands at, keyed by setting. */
    static Map<String, Level> of(List<SettingDef> settings, Map<String, Setting> values) {
        Map<String, Level> levels = new HashMap<>();
        for (SettingDef def : settings) {
            Setting value = values.get(def.id());
            if (value != null) {
                levels.put(def.id(), level(def, value));
            }
        }
        return levels;
    }

    /** The values it stands at, keyed by setting. */
    static Map<String, Level> of(Rigged rigged) {
        return of(rigged.settings(), rigged.values());
    }

    static Level level(SettingDef def, Setting value) {
        Double shown = shown(def, value.number());
        if (shown == null) {
            return Level.word(value.word() == null ? "" : value.word());
        }
        return Level.number(shown);
    }

    /** A change in words, such as "wing edge 146 mm, was 149". */
    static String words(TrimChange change) {
        SettingDef def = change.setting();
        SettingInfo info = info(def);
        String to = change.to() == null ? "not recorded" : info.show(level(def, change.to()));
        return def.label() + " " + to
                + (change.from() == null
                        ? ""
                        : ", was " + level(def, change.from()).label());
    }

    private static @Nullable Double shown(SettingDef def, @Nullable Double si) {
        return si == null
                ? null
                : Double.valueOf(unit(def).map(u -> u.fromSi(si)).orElse(si));
    }

    private static Optional<Unit> unit(SettingDef def) {
        for (Quantity quantity : Quantity.values()) {
            if (quantity.name().equals(def.quantity())) {
                Dimension dimension = quantity.dimension();
                return Unit.find(def.unit(), dimension);
            }
        }
        return Optional.empty();
    }
}
