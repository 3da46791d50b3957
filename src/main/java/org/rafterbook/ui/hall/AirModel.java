package org.rafterbook.ui.hall;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
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
import org.rafterbook.review.Span;
import org.rafterbook.ui.action.Press;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.Evening;
import org.rafterbook.work.HeightMark;
import org.rafterbook.work.Launch;
import org.rafterbook.work.Watch;

/** The flights in the air: their watches, and what is noted while they fly. */
public final class AirModel {

    private final HallModel hall;
    private final ObservableList<Timed> watches = FXCollections.observableArrayList();
    private final ObjectProperty<@Nullable Timed> picked = new SimpleObjectProperty<>(this, "picked");
    private final Map<String, Watch> clocks = new HashMap<>();
    private final Map<String, Span> expected = new HashMap<>();
    private final Set<String> failedLaunches = new HashSet<>();

    AirModel(HallModel hall) {
        this.hall = hall;
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
        return expected.get(timed.flightId());
    }

    void begin(Launch launch, String name, Press press) {
        Watch watch = Watch.started(press.nanoTime(), press.at());
        Timed timed = new Timed(launch.flightId(), name, watch, launch);
        clocks.put(launch.flightId(), watch);
        hall.outlookProperty().get().ifPresent(outlook -> {
            if (outlook.expected() != null) {
                expected.put(launch.flightId(), outlook.expected().bandS());
            }
        });
        watches.add(timed);
        picked.set(timed);
        hall.stateProperty().set(HallState.IN_THE_AIR);
        hall.change(d -> d.flying().launch(launch), flight -> {}, failure -> {
            failedLaunches.add(launch.flightId());
            hall.show(failure);
        });
    }

    void sync(Evening evening) {
        List<Timed> now = new ArrayList<>();
        for (FlightLine line : evening.inTheAir()) {
            Instant launchedAt = line.flight().launchedAt();
            if (launchedAt != null) {
                String id = line.flight().id();
                Watch watch = clocks.computeIfAbsent(id, key -> Watch.found(launchedAt));
                now.add(new Timed(id, HallModel.name(line), watch, null));
            }
        }
        // a launch that could not be written down is timed all the same
        for (Timed timed : watches) {
            boolean unwritten = timed.launch() != null && evening.find(timed.flightId()) == null;
            if (unwritten && failedLaunches.contains(timed.flightId())) {
                now.add(timed);
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
            hall.landing().stopped(timed, stop.durationS());
            hall.change(d -> d.flying().land(timed.flightId(), stop, timed.launch()), flight -> {
                failedLaunches.remove(flight.id());
                hall.landing().kept(flight);
            });
        }
    }

    /** The watch of a flight whose stop was wrong runs on. */
    void runOn(Flight flight, String name) {
        Watch watch =
                clocks.computeIfAbsent(flight.id(), key -> Watch.found(Objects.requireNonNull(flight.launchedAt())));
        Timed timed = new Timed(flight.id(), name, watch, null);
        watches.add(timed);
        picked.set(timed);
        hall.stateProperty().set(HallState.IN_THE_AIR);
    }

    /** Ends a flight with a time from another watch. */
    public void landTyped(Timed timed, TypedValue time, Consumer<Throwable> otherwise) {
        hall.change(
                d -> d.flying().correctTime(timed.flightId(), time),
                flight -> hall.landing().show(flight, timed.name(), time.si()),
                otherwise);
    }

    /** Notes what the picked flight does, at the second of the press. */
    public void note(Press press, FlightEventKind kind, @Nullable HeightMark at, @Nullable String text) {
        Timed timed = picked.get();
        if (timed != null) {
            double second = Math.round(timed.watch().elapsedS(press.nanoTime(), press.at()) * 10) / 10.0;
            Double value = kind == FlightEventKind.LAP ? lap(timed.flightId(), second) : null;
            hall.change(d -> d.flying().note(timed.flightId(), kind, second, at, value, text));
        }
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
            hall.change(d -> d.flying().didNotLaunch(timed.flightId()));
        }
    }
}
