package org.rafterbook;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** The clock of tests: an evening in January that never becomes midnight, another day or another season. */
public final class OneEvening {

    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-01-20T19:00:00Z"), ZoneOffset.UTC);

    private OneEvening() {}
}
