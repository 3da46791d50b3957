package org.rafterbook.ui.hall;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.work.HallDesk;
import org.rafterbook.work.Outlook;
import org.rafterbook.work.Watches;

/**
 * The Hall without its controls: what is shown, and every entry on its way to disk. Its parts are the flight being
 * prepared, those in the air, the landed one and the open trial. All is called on the JavaFX thread; files are read and
 * written in the background.
 */
public final class HallModel {

    private static final HallDataHolder NONE = new HallDataHolder(null);

    private final HallDesk desk;
    private @Nullable FirstReading first;
    private final FxBackground background;
    private final FxBackground.Slot loading = new FxBackground.Slot();
    private final FxBackground.Slot looking = new FxBackground.Slot();
    private final Errors errors;
    private final Clock clock;
    private final Entries entries;
    private final ObjectProperty<HallState> state = new SimpleObjectProperty<>(this, "state", HallState.PREPARING);
    private final ReadOnlyObjectWrapper<HallDataHolder> data = new ReadOnlyObjectWrapper<>(this, "data", NONE);
    private final ReadOnlyObjectWrapper<Optional<Outlook>> outlook =
            new ReadOnlyObjectWrapper<>(this, "outlook", Optional.empty());
    private final ReadOnlyBooleanWrapper computing = new ReadOnlyBooleanWrapper(this, "computing");
    private final PreparingModel preparing;
    private final AirModel air;
    private final LandingModel landing;
    private final TrialModel trial;
    private @Nullable Subscription following;
    private @Nullable Asked asked;
    private boolean loaded;
    private boolean complete;

    /** Holds what was read, nothing before the first reading. */
    public record HallDataHolder(@Nullable HallData data) {}

    /** What the outlook shown or being computed is about. */
    private record Asked(HallData data, boolean relaunch) {}

    /**
     * @param first what is shown first, which another thread may be reading already
     * @param watches those of this run of the program, which outlive the logbook
     */
    public HallModel(
            HallDesk desk, FirstReading first, FxBackground background, Errors errors, Clock clock, Watches watches) {
        this.desk = desk;
        this.first = first;
        this.background = background;
        this.errors = errors;
        this.clock = clock;
        this.entries = new Entries(background, errors::show, this::load);
        this.preparing = new PreparingModel(this, background);
        this.air = new AirModel(this, watches);
        this.landing = new LandingModel(this);
        this.trial = new TrialModel(this, background);
        preparing.relaunchProperty().subscribe(again -> look());
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

    /** What the prepared flight may do, empty while that is not known: never that of another flight. */
    public ReadOnlyObjectProperty<Optional<Outlook>> outlookProperty() {
        return outlook.getReadOnlyProperty();
    }

    /** Whether what the prepared flight may do is being computed. */
    public ReadOnlyBooleanProperty computingProperty() {
        return computing.getReadOnlyProperty();
    }

    /** The flight being prepared. */
    public PreparingModel preparing() {
        return preparing;
    }

    /** The flights in the air. */
    public AirModel air() {
        return air;
    }

    /** The flight on the landing sheet. */
    public LandingModel landing() {
        return landing;
    }

    /** The open trial. */
    public TrialModel trial() {
        return trial;
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
        trial.detach();
        preparing.detach();
        forgetOutlook();
    }

    /** Reads everything again; the first time without what takes long, which {@link #complete} brings. */
    public void load() {
        FirstReading once = first;
        first = null;
        background
                .call(progress -> once == null ? HallData.read(desk) : once.get())
                .in(loading)
                .then(this::show);
    }

    /** Called once what was read first is on the screen: reads what takes long. */
    public void complete() {
        if (!complete) {
            complete = true;
            if (following != null) {
                load();
            }
        }
    }

    private void show(HallData read) {
        if (entries.busy()) {
            return; // what is being entered will be read when it is on disk
        }
        air.sync(read.evening());
        if (asked != null && !read.equals(asked.data())) {
            forgetOutlook();
        }
        data.set(new HallDataHolder(read));
        landing.sync(read.evening());
        preparing.sync(read.prepared());
        trial.sync(read.prepared());
        if (!loaded) {
            loaded = true;
            if (!air.watches().isEmpty()) {
                state.set(HallState.IN_THE_AIR);
            }
        }
        if (complete) {
            look();
        }
    }

    /** What the flight may do takes a moment, and follows only where something has changed. */
    private void look() {
        HallData read = data();
        boolean again = preparing.relaunchProperty().get();
        if (read == null || !complete || new Asked(read, again).equals(asked)) {
            return;
        }
        forgetOutlook();
        asked = new Asked(read, again);
        computing.set(true);
        background
                .call(progress -> desk.outlook(read.prepared(), again, read.evening(), progress))
                .in(looking)
                .otherwise(failure -> {
                    computing.set(false);
                    errors.show(failure);
                })
                .then(found -> {
                    outlook.set(found);
                    computing.set(false);
                });
    }

    /** An answer to an older question is neither shown beside a newer one nor waited for. */
    private void forgetOutlook() {
        asked = null;
        looking.cancel();
        outlook.set(Optional.empty());
        computing.set(false);
    }

    /** Model and version of a flight, or what stands for them. */
    static String name(FlightLine line) {
        return line.model() == null || line.version() == null
                ? "Flight " + line.flight().ordinal()
                : line.model().name() + " " + line.model().letter()
                        + line.version().number();
    }

    void show(Throwable failure) {
        errors.show(failure);
    }

    /** Makes any entry of the desk; its failure is shown in the bar under the head. */
    <T> void change(Function<HallDesk, T> what) {
        entries.enter(progress -> what.apply(desk), value -> {});
    }

    /** The same with what follows. */
    <T> void change(Function<HallDesk, T> what, Consumer<? super T> then) {
        entries.enter(progress -> what.apply(desk), then);
    }

    /** The same with a place of its own for the failure. */
    <T> void change(Function<HallDesk, T> what, Consumer<? super T> then, Consumer<Throwable> otherwise) {
        entries.enter(progress -> what.apply(desk), then, otherwise);
    }

    /** Does it once all entries on their way are on disk or refused. */
    void whenKept(Runnable what) {
        entries.whenIdle(what);
    }

    HallDesk desk() {
        return desk;
    }
}
