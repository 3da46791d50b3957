package org.rafterbook.ui.hall;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindEnd;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Press;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.Evening;
import org.rafterbook.work.HallDesk;
import org.rafterbook.work.HeightMark;
import org.rafterbook.work.LandingEnd;
import org.rafterbook.work.Launch;
import org.rafterbook.work.Prepared;
import org.rafterbook.work.Rigged;
import org.rafterbook.work.Watch;
import org.rafterbook.work.WindForm;

/**
 * The Hall without its controls: what is shown, the running watches, and every entry on its way to disk. All is called
 * on the JavaFX thread; files are read and written in the background.
 */
public final class HallModel {

    private static final HallDataHolder NONE = new HallDataHolder(null);

    private final HallDesk desk;
    private final FxBackground background;
    private final FxBackground.Slot loading = new FxBackground.Slot();
    private final Errors errors;
    private final Clock clock;
    private final Entries entries;
    private final ObjectProperty<HallState> state = new SimpleObjectProperty<>(this, "state", HallState.PREPARING);
    private final ReadOnlyObjectWrapper<HallDataHolder> data = new ReadOnlyObjectWrapper<>(this, "data", NONE);
    private final ObservableList<Timed> watches = FXCollections.observableArrayList();
    private final ObjectProperty<@Nullable Timed> picked = new SimpleObjectProperty<>(this, "picked");
    private final ReadOnlyObjectWrapper<@Nullable Landed> landed = new ReadOnlyObjectWrapper<>(this, "landed");
    private final ObjectProperty<@Nullable String> setting = new SimpleObjectProperty<>(this, "setting");
    private final BooleanProperty relaunch = new SimpleBooleanProperty(this, "relaunch");
    private final ObjectProperty<@Nullable String> leaveOut = new SimpleObjectProperty<>(this, "leaveOut");
    private final Map<String, Watch> clocks = new HashMap<>();
    private final Set<String> failedLaunches = new HashSet<>();
    private @Nullable Subscription following;
    private boolean loaded;

    /** Holds what was read, nothing before the first reading. */
    public record HallDataHolder(@Nullable HallData data) {}

    /**
     * The flight on the landing sheet.
     *
     * @param durationS as stopped, shown before it is on disk
     * @param flight as kept, null until then
     */
    public record Landed(
            String flightId,
            String name,
            double durationS,
            @Nullable Flight flight) {}

    public HallModel(HallDesk desk, FxBackground background, Errors errors, Clock clock) {
        this.desk = desk;
        this.background = background;
        this.errors = errors;
        this.clock = clock;
        this.entries = new Entries(background, errors::show, this::load);
    }

    public ObjectProperty<HallState> stateProperty() {
        return state;
    }

    public ReadOnlyObjectProperty<HallDataHolder> dataProperty() {
        return data.getReadOnlyProperty();
    }

    /** What was read last, null before the first reading. */
    public @Nullable HallData data() {
        return data.get().data();
    }

    /** The flights in the air, in order of launch. */
    public ObservableList<Timed> watches() {
        return watches;
    }

    /** The one that Space stops. */
    public ObjectProperty<@Nullable Timed> pickedProperty() {
        return picked;
    }

    public ReadOnlyObjectProperty<@Nullable Landed> landedProperty() {
        return landed.getReadOnlyProperty();
    }

    /** The setting that the arrows turn, by its id. */
    public ObjectProperty<@Nullable String> settingProperty() {
        return setting;
    }

    /** Whether the next flight goes on the wind of the last one. */
    public BooleanProperty relaunchProperty() {
        return relaunch;
    }

    /** Why the next flight is to be left out, flagged before its time is known; null for one that counts. */
    public ObjectProperty<@Nullable String> leaveOutProperty() {
        return leaveOut;
    }

    public Instant now() {
        return clock.instant();
    }

    /** Follows what other places enter and take back, until {@link #detach}. */
    public void attach() {
        detach();
        following = desk.book()
                .onChange(() -> background.later(() -> {
                    if (!entries.busy()) {
                        load();
                    }
                }));
        load();
    }

    public void detach() {
        if (following != null) {
            following.cancel();
            following = null;
        }
    }

    /** Reads everything again; the first time what takes long comes after the rest. */
    public void load() {
        boolean first = !loaded;
        HallDesk from = first ? desk.withoutMargins() : desk;
        background.call(progress -> HallData.read(from)).in(loading).then(read -> {
            show(read);
            if (first && loaded) {
                load();
            }
        });
    }

    private void show(HallData read) {
        if (entries.busy()) {
            return; // what is being entered will be read when it is on disk
        }
        syncWatches(read.evening());
        data.set(new HallDataHolder(read));
        syncLanded(read.evening());
        if (read.prepared().again() == null) {
            relaunch.set(false);
        }
        if (!loaded) {
            loaded = true;
            if (!watches.isEmpty()) {
                state.set(HallState.IN_THE_AIR);
            }
        }
    }

    private void syncWatches(Evening evening) {
        List<Timed> now = new ArrayList<>();
        for (FlightLine line : evening.inTheAir()) {
            Instant launchedAt = line.flight().launchedAt();
            if (launchedAt != null) {
                String id = line.flight().id();
                Watch watch = clocks.computeIfAbsent(id, key -> Watch.found(launchedAt));
                now.add(new Timed(id, name(line), watch, null));
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
        if (now.isEmpty() && state.get() == HallState.IN_THE_AIR) {
            state.set(HallState.PREPARING);
        }
    }

    private void syncLanded(Evening evening) {
        Landed shown = landed.get();
        if (shown == null) {
            return;
        }
        FlightLine line = evening.find(shown.flightId());
        Double duration = line == null ? null : line.flight().durationS();
        if (line != null && duration != null) {
            landed.set(new Landed(shown.flightId(), name(line), duration, line.flight()));
            return;
        }
        landed.set(null);
        if (state.get() == HallState.LANDING) {
            for (Timed timed : watches) {
                if (timed.flightId().equals(shown.flightId())) {
                    picked.set(timed);
                }
            }
            state.set(watches.isEmpty() ? HallState.PREPARING : HallState.IN_THE_AIR);
        }
    }

    static String name(FlightLine line) {
        return line.model() == null || line.version() == null
                ? "Flight " + line.flight().ordinal()
                : line.model().name() + " " + line.model().letter()
                        + line.version().number();
    }

    // ---- Preparing ----

    private @Nullable Rigged rigged() {
        HallData read = data();
        return read == null ? null : read.prepared().rigged();
    }

    private Launch next(@Nullable Instant at) {
        HallData read = data();
        Rigged rigged = rigged();
        Prepared prepared = read == null ? null : read.prepared();
        Wind wind = prepared == null ? null : relaunch.get() ? prepared.again() : prepared.wind();
        return Launch.of(rigged == null ? null : rigged.model().id(), wind == null ? null : wind.id(), at)
                .leftOut(leaveOut.get());
    }

    private String nextName() {
        Rigged rigged = rigged();
        HallData read = data();
        return rigged != null
                ? rigged.model().name() + " " + rigged.name()
                : "Flight " + (read == null ? 1 : read.prepared().ordinal());
    }

    /** Starts the watch: it runs from the press itself, and the flight is on its way to disk. */
    public void start(Press press) {
        Launch launch = next(press.at());
        Watch watch = Watch.started(press.nanoTime(), press.at());
        Timed timed = new Timed(launch.flightId(), nextName(), watch, launch);
        clocks.put(launch.flightId(), watch);
        watches.add(timed);
        picked.set(timed);
        state.set(HallState.IN_THE_AIR);
        relaunch.set(false);
        leaveOut.set(null);
        entries.enter(progress -> desk.flying().launch(launch), flight -> {}, failure -> {
            failedLaunches.add(launch.flightId());
            errors.show(failure);
        });
    }

    /** Keeps a flight whose time comes from another watch. */
    public void typed(TypedValue time, Consumer<Throwable> otherwise) {
        Launch launch = next(null);
        String name = nextName();
        entries.enter(
                progress -> desk.flying().typed(launch, time),
                flight -> {
                    relaunch.set(false);
                    leaveOut.set(null);
                    landed.set(new Landed(flight.id(), name, time.si(), flight));
                    state.set(HallState.LANDING);
                },
                otherwise);
    }

    /** Prepares for this model from now on; null just times flights. */
    public void choose(@Nullable String modelId) {
        setting.set(null);
        change(d -> {
            d.choose(modelId);
            return true;
        });
    }

    /** Adds a model by name and prepares for it. */
    public void addModel(String name, Consumer<Throwable> otherwise) {
        entries.enter(progress -> desk.addModel(name), model -> {}, otherwise);
    }

    /** Turns the picked setting by so many steps. */
    public void turn(int steps) {
        Rigged rigged = rigged();
        String id = setting.get();
        if (rigged != null && id != null) {
            change(d -> d.step(rigged.model().id(), id, steps));
        }
    }

    /** Sets the picked setting to what was typed. */
    public void set(Setting value, Consumer<Throwable> otherwise) {
        Rigged rigged = rigged();
        String id = setting.get();
        if (rigged != null && id != null) {
            entries.enter(progress -> desk.set(rigged.model().id(), id, value), r -> {}, otherwise);
        }
    }

    /** Goes back to a version flown before. */
    public void backTo(String versionId, String name) {
        change(d -> d.book().riggings().backTo(versionId, "back to " + name, null));
    }

    /** Keeps the wind on the motor as the form has it. */
    public void wind(WindForm form, Consumer<Throwable> otherwise) {
        HallData read = data();
        Wind wind = read == null ? null : read.prepared().wind();
        String id = wind == null ? null : wind.id();
        entries.enter(progress -> desk.winding().keep(id, form), kept -> {}, otherwise);
    }

    /** Ends the wind on the motor without a flight. */
    public void endWind(WindEnd end) {
        HallData read = data();
        Wind wind = read == null ? null : read.prepared().wind();
        if (wind != null) {
            change(d -> d.winding().end(wind.id(), end));
        }
    }

    // ---- In the air ----

    /** Seconds a flight has been in the air. */
    public double elapsedS(Timed timed, long nanoTime) {
        return timed.watch().elapsedS(nanoTime, clock.instant());
    }

    /** Stops the picked watch at the press. */
    public void stop(Press press) {
        Timed timed = picked.get();
        if (timed != null) {
            Watch.Stop stop = timed.watch().stop(press.nanoTime(), press.at());
            watches.remove(timed);
            picked.set(watches.isEmpty() ? null : watches.get(0));
            landed.set(new Landed(timed.flightId(), timed.name(), stop.durationS(), null));
            state.set(HallState.LANDING);
            entries.enter(progress -> desk.flying().land(timed.flightId(), stop, timed.launch()), flight -> {
                failedLaunches.remove(flight.id());
                Landed shown = landed.get();
                if (shown != null && shown.flightId().equals(flight.id())) {
                    landed.set(new Landed(shown.flightId(), shown.name(), shown.durationS(), flight));
                }
            });
        }
    }

    /** Ends the picked flight with a time from another watch. */
    public void landTyped(Timed timed, TypedValue time, Consumer<Throwable> otherwise) {
        entries.enter(
                progress -> desk.flying().correctTime(timed.flightId(), time),
                flight -> {
                    landed.set(new Landed(flight.id(), timed.name(), time.si(), flight));
                    state.set(HallState.LANDING);
                },
                otherwise);
    }

    /** Notes what the picked flight does, at the second of the press. */
    public void note(Press press, FlightEventKind kind, @Nullable HeightMark at, @Nullable String text) {
        Timed timed = picked.get();
        if (timed != null) {
            double second = Math.round(timed.watch().elapsedS(press.nanoTime(), press.at()) * 10) / 10.0;
            Double value = kind == FlightEventKind.LAP ? lap(timed.flightId(), second) : null;
            change(d -> d.flying().note(timed.flightId(), kind, second, at, value, text));
        }
    }

    private @Nullable Double lap(String flightId, double second) {
        HallData read = data();
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
            change(d -> d.flying().didNotLaunch(timed.flightId()));
        }
    }

    // ---- Landing ----

    /** Opens the landing sheet of a flight of this evening. */
    public void open(FlightLine line) {
        Double duration = line.flight().durationS();
        if (duration != null) {
            landed.set(new Landed(line.flight().id(), name(line), duration, line.flight()));
            state.set(HallState.LANDING);
        }
    }

    /** Opens the flight before (-1) or after (1) the one on the landing sheet. */
    public void openNext(int direction) {
        HallData read = data();
        Landed shown = landed.get();
        if (read == null) {
            return;
        }
        List<FlightLine> timed = read.evening().flights().stream()
                .filter(l -> l.flight().durationS() != null)
                .toList();
        int at = timed.size();
        for (int i = 0; i < timed.size(); i++) {
            if (shown != null && timed.get(i).flight().id().equals(shown.flightId())) {
                at = i;
            }
        }
        int wanted = at + direction;
        if (wanted >= 0 && wanted < timed.size()) {
            open(timed.get(wanted));
        }
    }

    /** The stop was wrong: the watch has run on. */
    public void stillFlying() {
        Landed shown = landed.get();
        if (shown != null) {
            String id = shown.flightId();
            entries.enter(progress -> desk.flying().stillFlying(id), flight -> {
                Watch watch =
                        clocks.computeIfAbsent(id, key -> Watch.found(Objects.requireNonNull(flight.launchedAt())));
                Timed timed = new Timed(id, shown.name(), watch, null);
                watches.add(timed);
                picked.set(timed);
                landed.set(null);
                state.set(HallState.IN_THE_AIR);
            });
        }
    }

    /** Ready for the next flight, or for the one still in the air. */
    public void done() {
        state.set(watches.isEmpty() ? HallState.PREPARING : HallState.IN_THE_AIR);
    }

    public void end(LandingEnd end) {
        ofLanded(id -> change(d -> d.answers().end(id, end)));
    }

    public void costTime(CutShort answer) {
        ofLanded(id -> change(d -> d.answers().costTime(id, answer)));
    }

    public void turnsLeft(@Nullable TypedValue turns, Consumer<Throwable> otherwise) {
        ofLanded(id -> entries.enter(progress -> desk.answers().turnsLeft(id, turns), f -> {}, otherwise));
    }

    public void peak(@Nullable TypedRange range, Consumer<Throwable> otherwise) {
        ofLanded(id -> entries.enter(progress -> desk.answers().peak(id, range), f -> {}, otherwise));
    }

    public void notes(@Nullable String text) {
        ofLanded(id -> change(d -> d.answers().notes(id, text == null ? "" : text)));
    }

    /** Something it did in the landed flight, its second not known. */
    public void did(FlightEventKind kind) {
        ofLanded(id -> change(d -> d.flying().note(id, kind, null, null, null, null)));
    }

    /** Flags the landed flight, or with null takes the flag away. */
    public void leaveLandedOut(@Nullable String why, Consumer<Throwable> otherwise) {
        ofLanded(id -> entries.enter(progress -> desk.answers().leaveOut(id, why), f -> {}, otherwise));
    }

    public void correctTime(TypedValue time, Consumer<Throwable> otherwise) {
        ofLanded(id -> entries.enter(progress -> desk.flying().correctTime(id, time), f -> {}, otherwise));
    }

    public void giveModel(String modelId) {
        ofLanded(id -> change(d -> d.answers().giveModel(id, modelId)));
    }

    private void ofLanded(Consumer<String> what) {
        Landed shown = landed.get();
        if (shown != null) {
            what.accept(shown.flightId());
        }
    }

    /** Makes any entry of the desk; its failure is shown in the bar under the head. */
    <T> void change(Function<HallDesk, T> what) {
        entries.enter(progress -> what.apply(desk), value -> {});
    }

    /** The same with a place of its own for the failure. */
    <T> void change(Function<HallDesk, T> what, Consumer<? super T> then, Consumer<Throwable> otherwise) {
        entries.enter(progress -> what.apply(desk), then, otherwise);
    }
}
