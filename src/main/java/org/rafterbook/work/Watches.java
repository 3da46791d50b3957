package org.rafterbook.work;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.ClockTime;

/**
 * The watches started in this run of the program, whichever logbook their flights are in, and the times that are not on disk
 * yet: a flight in the air is timed on as before when its logbook is opened again, and a time that was refused is offered
 * again, as is a launch of which nothing is on disk. Used on one thread.
 */
public final class Watches {

    /**
     * A landing on its way to disk, or refused there.
     *
     * @param logbook the file its flight belongs in
     * @param name what the flight is called
     * @param launch the launch, where that may not be on disk either; null for one that is
     * @param refused why it could not be kept; null while that is not known
     */
    public record Stopped(
            Path logbook,
            String flightId,
            String name,
            Watch watch,
            @Nullable Launch launch,
            Watch.Stop stop,
            @Nullable String refused) {

        private Stopped because(@Nullable String why) {
            return new Stopped(logbook, flightId, name, watch, launch, stop, why);
        }
    }

    /**
     * A flight let go whose launch could not be written down; it is timed all the same.
     *
     * @param logbook the file it belongs in
     * @param name what the flight is called
     */
    public record Unwritten(Path logbook, String name, Watch watch, Launch launch) {}

    private final Map<String, Watch> byFlight = new HashMap<>();
    private final Map<String, Unwritten> unwritten = new LinkedHashMap<>();
    private final Map<String, Stopped> unkept = new LinkedHashMap<>();

    /** Keeps the watch that was started for a flight. */
    public void started(String flightId, Watch watch) {
        byFlight.put(flightId, watch);
    }

    /** The watch of a flight; by the wall clock for one that another run of the program launched. */
    public Watch of(String flightId, Instant launchedAt) {
        return byFlight.computeIfAbsent(flightId, id -> Watch.found(launchedAt));
    }

    /** Holds a launch that was refused until its landing is kept. */
    public void unwritten(Unwritten flight) {
        unwritten.put(flight.launch().flightId(), flight);
    }

    /** The flights of a logbook in the air of which nothing is on disk, in order of launch. */
    public List<Unwritten> unwritten(Path logbook) {
        return unwritten.values().stream()
                .filter(flight -> flight.logbook().equals(logbook)
                        && !unkept.containsKey(flight.launch().flightId()))
                .toList();
    }

    /** Holds a stopped time until it is kept. */
    public void stopped(Stopped landing) {
        unkept.put(landing.flightId(), landing);
    }

    /** The stopped time of a flight could not be kept; null for why while it is tried again. */
    public void refused(String flightId, @Nullable String why) {
        unkept.computeIfPresent(flightId, (id, landing) -> landing.because(why));
    }

    /** The stopped time is on disk. */
    public void kept(String flightId) {
        unkept.remove(flightId);
        unwritten.remove(flightId);
    }

    /** The stop was none: the watch runs on. */
    public void runsOn(String flightId) {
        unkept.remove(flightId);
    }

    /** The stopped time of a flight that is not on disk yet. */
    public Optional<Stopped> unkept(String flightId) {
        return Optional.ofNullable(unkept.get(flightId));
    }

    /** What would be lost if the program ended now: stopped times that were refused, and flights nothing of which is on disk. */
    public List<String> notOnDisk() {
        List<String> names = new ArrayList<>();
        unkept.values().stream()
                .filter(landing -> landing.refused() != null)
                .forEach(landing -> names.add(landing.name() + " landed after "
                        + ClockTime.minutesSeconds(landing.stop().durationS())));
        unwritten.values().stream()
                .filter(flight -> !unkept.containsKey(flight.launch().flightId()))
                .forEach(flight -> names.add(flight.name() + " in the air"));
        return names;
    }

    /** The first stopped time of a logbook's flights that was refused. */
    public Optional<Stopped> firstRefused(Path logbook) {
        return unkept.values().stream()
                .filter(landing ->
                        landing.refused() != null && landing.logbook().equals(logbook))
                .findFirst();
    }
}
