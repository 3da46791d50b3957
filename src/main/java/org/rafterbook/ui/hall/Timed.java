package org.rafterbook.ui.hall;

import org.jspecify.annotations.Nullable;
import org.rafterbook.work.Launch;
import org.rafterbook.work.Watch;

/**
 * A flight being timed.
 *
 * @param name model and version, or what stands for them
 * @param launch as let go in this run of the program, null for a flight found in the air at the start
 */
public record Timed(
        String flightId, String name, Watch watch, @Nullable Launch launch) {}
