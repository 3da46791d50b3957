package org.rafterbook.work;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/**
 * The watches started in this run of the program, whichever logbook their flights are in: a flight in the air is timed on
 * as before when its logbook is opened again. Used on one thread.
 */
public final class Watches {

    private final Map<String, Watch> byFlight = new HashMap<>();

    /** Keeps the watch that was started for a flight. */
    public void started(String flightId, Watch watch) {
        byFlight.put(flightId, watch);
    }

    /** The watch of a flight; by the wall clock for one that another run of the program launched. */
    public Watch of(String flightId, Instant launchedAt) {
        return byFlight.computeIfAbsent(flightId, id -> Watch.found(launchedAt));
    }
}
