package org.rafterbook.work;

import org.rafterbook.airframe.SettingDef;

/**
 * A setting of a model and where it stands.
 *
 * @param value as it would be typed, empty where it is not recorded
 */
public record SettingNow(SettingDef def, String value) {}
