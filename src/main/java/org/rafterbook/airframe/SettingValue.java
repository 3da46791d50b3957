package org.rafterbook.airframe;

import org.jspecify.annotations.Nullable;

/**
 * The value of one setting in one version: a number in SI or a word, never both.
 *
 * @param asTyped what the flyer typed, kept beside the value
 */
public record SettingValue(
        String id,
        String versionId,
        String settingId,
        @Nullable Double number,
        @Nullable String word,
        @Nullable String asTyped) {}
