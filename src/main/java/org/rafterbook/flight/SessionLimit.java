package org.rafterbook.flight;

import org.jspecify.annotations.Nullable;

/** What hangs in the way on this evening and how high, m. */
public record SessionLimit(
        String id, String sessionId, @Nullable String markId, String name, double heightM) {}
