package org.rafterbook.ui.hall;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindEnd;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Press;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.GoBack;
import org.rafterbook.work.Launch;
import org.rafterbook.work.Prepared;
import org.rafterbook.work.Rigged;
import org.rafterbook.work.WindForm;

/** The next flight: its model, trim, motor and wind, until it is let go. */
public final class PreparingModel {

    private final HallModel hall;
    private final FxBackground background;
    private final FxBackground.Slot looking = new FxBackground.Slot();
    private final ObjectProperty<@Nullable String> setting = new SimpleObjectProperty<>(this, "setting");
    private final BooleanProperty relaunch = new SimpleBooleanProperty(this, "relaunch");
    private final ObjectProperty<@Nullable String> leaveOut = new SimpleObjectProperty<>(this, "leaveOut");

    private Consumer<Optional<GoBack>> found = none -> {};

    PreparingModel(HallModel hall, FxBackground background) {
        this.hall = hall;
        this.background = background;
    }

    void detach() {
        looking.cancel();
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

    void sync(Prepared prepared) {
        if (prepared.again() == null) {
            relaunch.set(false);
        }
    }

    private @Nullable Prepared prepared() {
        HallData read = hall.data();
        return read == null ? null : read.prepared();
    }

    private @Nullable Rigged rigged() {
        Prepared prepared = prepared();
        return prepared == null ? null : prepared.rigged();
    }

    private @Nullable Wind wound() {
        Prepared prepared = prepared();
        return prepared == null ? null : prepared.wind();
    }

    private Launch next(@Nullable Instant at) {
        Rigged rigged = rigged();
        Prepared prepared = prepared();
        Wind wind = prepared == null ? null : relaunch.get() ? prepared.again() : prepared.wind();
        return Launch.of(rigged == null ? null : rigged.model().id(), wind == null ? null : wind.id(), at)
                .leftOut(leaveOut.get());
    }

    private String nextName() {
        Rigged rigged = rigged();
        Prepared prepared = prepared();
        return rigged != null
                ? rigged.model().name() + " " + rigged.name()
                : "Flight " + (prepared == null ? 1 : prepared.ordinal());
    }

    /** Starts the watch: it runs from the press itself, and the flight is on its way to disk. */
    public void start(Press press) {
        Launch launch = next(press.at());
        hall.air().begin(launch, nextName(), press);
        over();
    }

    /** Keeps a flight whose time comes from another watch. */
    public void typed(TypedValue time, Runnable kept, Consumer<Throwable> otherwise) {
        Launch launch = next(null);
        String name = nextName();
        hall.change(
                d -> d.flying().typed(launch, time),
                flight -> {
                    kept.run();
                    over();
                    hall.landing().show(flight, name, time.si());
                },
                otherwise);
    }

    private void over() {
        relaunch.set(false);
        leaveOut.set(null);
    }

    /** Prepares for this model from now on; null just times flights. */
    public void choose(@Nullable String modelId) {
        setting.set(null);
        hall.change(d -> {
            d.choose(modelId);
            return true;
        });
    }

    /** Adds a model by name and prepares for it. */
    public void addModel(String name, Runnable kept, Consumer<Throwable> otherwise) {
        hall.change(d -> d.addModel(name), model -> kept.run(), otherwise);
    }

    /** Turns the picked setting by so many steps. */
    public void turn(int steps) {
        Rigged rigged = rigged();
        String id = setting.get();
        if (rigged != null && id != null) {
            hall.change(d -> d.step(rigged.model().id(), id, steps));
        }
    }

    /** Sets the picked setting to what was typed. */
    public void set(Setting value, Consumer<Throwable> otherwise) {
        Rigged rigged = rigged();
        String id = setting.get();
        if (rigged != null && id != null) {
            hall.change(d -> d.set(rigged.model().id(), id, value), r -> {}, otherwise);
        }
    }

    /** Goes back to a version flown before. */
    public void backTo(String versionId, String name) {
        hall.change(d -> d.book().riggings().backTo(versionId, "back to " + name, null));
    }

    /** Has the version with the highest estimate looked for, which takes computing where the flights are new. */
    void findHighestEstimate() {
        Rigged rigged = rigged();
        if (rigged != null) {
            background
                    .call(progress -> hall.desk().highestEstimate(rigged.model().id(), progress))
                    .in(looking)
                    .then(found);
        }
    }

    void onHighestEstimate(Consumer<Optional<GoBack>> taker) {
        found = taker;
    }

    /** Keeps the wind on the motor as the form has it. */
    public void wind(WindForm form, Consumer<Throwable> otherwise) {
        Wind wind = wound();
        String id = wind == null ? null : wind.id();
        hall.change(d -> d.winding().keep(id, form), kept -> {}, otherwise);
    }

    /** Ends the wind on the motor without a flight. */
    public void endWind(WindEnd end) {
        Wind wind = wound();
        if (wind != null) {
            hall.change(d -> d.winding().end(wind.id(), end));
        }
    }
}
