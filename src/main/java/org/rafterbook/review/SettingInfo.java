package org.rafterbook.review;

import org.jspecify.annotations.Nullable;

/**
 * What a setting is called and between which values the flyer allows it.
 *
 * @param key the key under which flights carry its value
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

    /** A setting of which nothing but the name is known. */
    public static SettingInfo named(String name) {
        return new SettingInfo(name, name, "", null, null, null, null);
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
