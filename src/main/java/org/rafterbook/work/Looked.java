package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.stability.TrimAnswer;

/**
 * A version as it is, or with settings or an airframe that are only looked at, with all that is computed of it.
 *
 * @param airframe null for a version without geometry
 * @param trim null where mass, balance or geometry are unknown
 */
public record Looked(
        Rigged version,
        @Nullable Airframe airframe,
        MarginAnswer margin,
        @Nullable TrimAnswer trim) {}
