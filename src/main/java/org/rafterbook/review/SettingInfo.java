package org.rafterbook.review;

import org.jspecify.annotations.Nullable;

/**
 * What a setting is called and between which values the flyer allows it.
 *
 * @param key the key under which flights carry its value; empty for the stability margin, which is no setting
 * @param label the flyer's name for it
 * @param unit unit of its numbers as shown, empty where it has none
 * @param step usual step, in {@code unit}
 * @param tolerance how exactly it can be set, in {@code unit}
 * @param low lowest value the flyer allows, in {@code unit}
 * @param high highest value the flyer allows, in {@code unit}
 */
public record SettingInfo(
        String key,
        String label,
        String unit,
        @Nullable Double step,
        @Nullable Double tolerance,
        @Nullable Double low,
        @Nullable Double high) {

    /** How finely a margin is told, points: it is computed, and nobody wants its fifteen digits. */
    static final double MARGIN_RESOLUTION = 0.1;

    /** A setting of which nothing but the name is known. */
    public static SettingInfo named(String name) {
        return new SettingInfo(name, name, "", null, null, null, null);
    }

    /** False for the margin, which follows from settings and cannot be set itself. */
    boolean isSetting() {
        return !key.isEmpty();
    }

    /** A place on the axis as the flyer reads it, with the unit; without what binary arithmetic leaves behind. */
    String show(double x) {
        return isSetting() ? show(NextTry.level(x)) : Figures.value(x, MARGIN_RESOLUTION) + afterNumber();
    }

    /** A value as the flyer reads it, with the unit. */
    public String show(Level level) {
        return level.value() == null ? level.label() : level.label() + afterNumber();
    }

    /** The unit as it follows a number: the degree sign close to it, any other after a space; empty where it has none. */
    String afterNumber() {
        return unit.isEmpty() || unit.equals("°") ? unit : " " + unit;
    }
}
