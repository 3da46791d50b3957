package org.rafterbook.work;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is known of one winding, in motor turns and SI.
 *
 * @param winderRatio motor turns for one turn of the winder, where those were counted
 * @param asTyped what was typed, keyed by the component's name
 */
public record WindForm(
        @Nullable String motorId,
        @Nullable Double turnsWound,
        @Nullable Double turnsBackedOff,
        @Nullable Double maxTorqueNm,
        @Nullable Double launchTorqueNm,
        @Nullable Double winderRatio,
        Map<String, String> asTyped) {}
