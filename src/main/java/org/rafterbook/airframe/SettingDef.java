package org.rafterbook.airframe;

import org.jspecify.annotations.Nullable;

/**
 * Something the flyer chooses on one model: never a consequence such as balance or margin. Numbers are SI.
 *
 * @param label what the flyer calls it
 * @param quantity name of the {@code units.Quantity}; TEXT for words
 * @param unit symbol of the unit it is shown and stepped in
 * @param step usual step, SI
 * @param tolerance two values nearer than half of this are the same, SI
 * @param low lower limit of the slider or post, SI
 * @param high upper limit, SI
 * @param keyLetter upper-case letter dealt when the setting was made
 * @param path key of the airframe sheet it sets, such as {@code wing.edge_aft_mm}; null for a free setting
 * @param ordinal place in lists
 */
public record SettingDef(
        String id,
        String modelId,
        String label,
        String quantity,
        String unit,
        @Nullable Double step,
        @Nullable Double tolerance,
        @Nullable Double low,
        @Nullable Double high,
        @Nullable String keyLetter,
        @Nullable String path,
        int ordinal) {

    /** The same setting under another name. */
    public SettingDef named(String other) {
        return new SettingDef(id, modelId, other, quantity, unit, step, tolerance, low, high, keyLetter, path, ordinal);
    }

    /** The same setting tied to a key of the airframe sheet. */
    public SettingDef tiedTo(String sheetPath) {
        return new SettingDef(
                id, modelId, label, quantity, unit, step, tolerance, low, high, keyLetter, sheetPath, ordinal);
    }
}
