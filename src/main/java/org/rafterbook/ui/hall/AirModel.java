package org.rafterbook.ui.hall;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.review.ExpectedFlight;
import org.rafterbook.review.Span;
import org.rafterbook.ui.action.Press;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.Evening;
import org.rafterbook.work.HeightMark;
import org.rafterbook.work.Launch;
import org.rafterbook.work.Watch;
import org.rafterbook.work.Watches;

/** The flights in the air: their watches, and what is noted while they fly. */
public final class AirModel {

    private final HallModel hall;
    private final ObservableList<Timed> watches = FXCollections.observableArrayList();
    private final ObjectProperty<@Nullable Timed> picked = new SimpleObjectProperty<>(this, "picked");
    private final Watches clocks;
    private final Map<String, ExpectedFlight> expected = new HashMap<>();
    private boolean lookedForRefused;

    AirModel(HallModel hall, Watches clocks) {
        this.hall = hall;
        this.clocks = clocks;
    }

    /** The flights in the air, in order of launch. */
    public ObservableList<Timed> watches() {
        return watches;
    }

    /** The one that Space stops. */
    public ObjectProperty<@Nullable Timed> pickedProperty() {
        return picked;
    }

    /** Seconds within which a flight was expected to land when it was let go; null where nothing could be told. */
    public @Nullable Span expectedS(Timed timed) {
        ExpectedFlight known = expected.get(timed.flightId());
        return known == null ? null : known.bandS();
    }

    /** What was expected of a flight when it was let go in this run of the program; null where nothing could be told. */
    @Nullable
    ExpectedFlight expectedAtLaunch(String flightId) {
        return expected.get(flightId);
    }

    void begin(Launch launch, String name, Press press) {
        Watch watch = Watch.started(press.nanoTime(), press.at());
        Timed timed = new Timed(launch.flightId(), name, watch, launch);
        clocks.started(launch.flightId(), watch);
        hall.outlookProperty().get().ifPresent(outlook -> {
            ExpectedFlight known = outlook.expected();
            if (known != null) {
                expected.put(launch.flightId(), known);
            }
        });
        watches.add(timed);
        picked.set(timed);
        hall.stateProperty().set(HallState.IN_THE_AIR);
        hall.change(d -> d.flying().launch(launch), flight -> {}, failure -> {
            clocks.unwritten(new Watches.Unwritten(logbook(), name, watch, launch));
            hall.show(failure);
        });
    }

    void sync(Evening evening) {
        List<Timed> now = new ArrayList<>();
        for (FlightLine line : evening.inTheAir()) {
            Instant launchedAt = line.flight().launchedAt();
            String id = line.flight().id();
            if (launchedAt != null && !isUnkept(id)) {
                now.add(new Timed(id, HallModel.name(line), clocks.of(id, launchedAt), null));
            }
        }
        // a launch that could not be written down is timed all the same
        for (Watches.Unwritten flight : clocks.unwritten(logbook())) {
            Launch launch = flight.launch();
            if (evening.find(launch.flightId()) == null) {
                now.add(new Timed(launch.flightId(), flight.name(), flight.watch(), launch));
            }
        }
        if (!now.equals(watches)) {
            watches.setAll(now);
        }
        Timed was = picked.get();
        picked.set(now.stream()
                .filter(t -> was != null && t.flightId().equals(was.flightId()))
                .findFirst()
                .orElse(now.isEmpty() ? null : now.get(0)));
        if (now.isEmpty() && hall.stateProperty().get() == HallState.IN_THE_AIR) {
            hall.stateProperty().set(HallState.PREPARING);
        }
        if (!lookedForRefused) {
            lookedForRefused = true;
            offerRefused(); // from before this logbook was left for another
        }
    }

    /** Picks the flight if it is in the air. */
    void pick(String flightId) {
        watches.stream().filter(t -> t.flightId().equals(flightId)).forEach(picked::set);
    }

    /** Seconds a flight has been in the air. */
    public double elapsedS(Timed timed, long nanoTime) {
        return timed.watch().elapsedS(nanoTime, hall.now());
    }

    /** Stops the picked watch at the press. */
    public void stop(Press press) {
        Timed timed = picked.get();
        if (timed != null) {
            Watch.Stop stop = timed.watch().stop(press.nanoTime(), press.at());
            watches.remove(timed);
            picked.set(watches.isEmpty() ? null : watches.get(0));
            clocks.stopped(new Watches.Stopped(
                    logbook(), timed.flightId(), timed.name(), timed.watch(), timed.launch(), stop, null));
            hall.landing().stopped(timed, stop.durationS());
            keepStop(timed.flightId());
        }
    }

    /** Whether a stopped time is not on disk yet. */
    boolean isUnkept(String flightId) {
        return clocks.unkept(flightId).isPresent();
    }

    private Path logbook() {
        return hall.desk().book().file();
    }

    /** Writes the stopped time down; where that is refused it stays, to be tried again. */
    void keepStop(String flightId) {
        clocks.refused(flightId, null);
        clocks.unkept(flightId)
                .ifPresent(stopped -> hall.change(
                        d -> d.flying().land(flightId, stopped.stop(), stopped.launch()),
                        flight -> {
                            clocks.kept(flightId);
                            hall.landing().kept(flight);
                        },
                        failure -> {
                            clocks.refused(flightId, Texts.sentence(failure));
                            hall.landing().refused(flightId, Texts.sentence(failure));
                        }));
    }

    /** The launch of a flight whose stopped time is not on disk, where the launch may not be either. */
    @Nullable
    Launch launchOfUnkept(String flightId) {
        return clocks.unkept(flightId).map(Watches.Stopped::launch).orElse(null);
    }

    /** A typed time was kept in the place of the stopped one. */
    void typedInstead(String flightId) {
        clocks.kept(flightId);
    }

    /** Shows again a stopped time that could not be kept; false where there is none, or a flight is being timed. */
    boolean offerRefused() {
        Watches.Stopped stopped = clocks.firstRefused(logbook()).orElse(null);
        if (stopped == null || !watches.isEmpty()) {
            return false;
        }
        hall.landing().stopped(timed(stopped), stopped.stop().durationS());
        hall.landing().refused(stopped.flightId(), Objects.requireNonNull(stopped.refused()));
        return true;
    }

    private static Timed timed(Watches.Stopped stopped) {
        return new Timed(stopped.flightId(), stopped.name(), stopped.watch(), stopped.launch());
    }

    /** A stop that is not on disk was wrong: the watch runs on. */
    void runOn(String flightId) {
        clocks.unkept(flightId).ifPresent(stopped -> {
            clocks.runsOn(flightId);
            runOn(timed(stopped));
        });
    }

    /** The watch of a flight whose stop was wrong runs on. */
    void runOn(Flight flight, String name) {
        Watch watch = clocks.of(flight.id(), Objects.requireNonNull(flight.launchedAt()));
        runOn(new Timed(flight.id(), name, watch, null));
    }

    private void runOn(Timed timed) {
        watches.add(timed);
        picked.set(timed);
        hall.stateProperty().set(HallState.IN_THE_AIR);
    }

    /** Ends a flight with a time from another watch. */
    public void landTyped(Timed timed, TypedValue time, Runnable kept, Consumer<Throwable> otherwise) {
        hall.change(
                d -> d.flying().correctTime(timed.flightId(), time, timed.launch()),
                flight -> {
                    clocks.kept(flight.id());
                    kept.run();
                    hall.landing().show(flight, timed.name(), time.si());
                },
                otherwise);
    }

    /** Notes what the picked flight does, at the second of the press. */
    public void note(Press press, FlightEventKind kind, @Nullable HeightMark at, @Nullable String text) {
        Timed timed = picked.get();
        if (timed != null) {
            double second = second(timed, press);
            Double value = kind == FlightEventKind.LAP ? lap(timed.flightId(), second) : null;
            hall.change(d -> d.flying().note(timed.flightId(), kind, second, at, value, text));
        }
    }

    /** Notes words of the flyer's own about the picked flight, at the second of the press. */
    void write(Press press, String text, Runnable kept, Consumer<Throwable> otherwise) {
        Timed timed = picked.get();
        if (timed != null) {
            hall.change(
                    d -> d.flying()
                            .note(timed.flightId(), FlightEventKind.NOTE, second(timed, press), null, null, text),
                    event -> kept.run(),
                    otherwise);
        }
    }

    private static double second(Timed timed, Press press) {
        return Math.round(timed.watch().elapsedS(press.nanoTime(), press.at()) * 10) / 10.0;
    }

    private @Nullable Double lap(String flightId, double second) {
        HallData read = hall.data();
        Double last = null;
        for (FlightEvent event :
                read == null ? List.<FlightEvent>of() : read.evening().eventsOf(flightId)) {
            if (event.kind() == FlightEventKind.LAP && event.atS() != null) {
                last = event.atS();
            }
        }
        return last == null ? null : Double.valueOf(Math.round((second - last) * 10) / 10.0);
    }

    /** The picked flight was not let go. */
    public void didNotLaunch() {
        Timed timed = picked.get();
        if (timed != null) {
            hall.change(
                    d -> d.flying().didNotLaunch(timed.flightId(), timed.launch()), flight -> clocks.kept(flight.id()));
        }
    }
}
