package org.rafterbook.work;

import org.jspecify.annotations.Nullable;

/**
 * Something at a known height in the venue, or hanging in it on this evening only.
 *
 * @param markId mark of the venue, null for what hangs there on this evening only
 * @param limit true where a touch costs time
 */
public record HeightMark(@Nullable String markId, String name, double heightM, boolean limit) {}
