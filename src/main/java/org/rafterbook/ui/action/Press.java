package org.rafterbook.ui.action;

import java.time.Instant;

/**
 * The instant a key or button was pressed, taken before anything else was done.
 *
 * @param nanoTime reading of {@link System#nanoTime()}, for durations
 * @param at wall clock
 */
public record Press(long nanoTime, Instant at) {

    public static Press now() {
        return new Press(System.nanoTime(), Instant.now());
    }
}
