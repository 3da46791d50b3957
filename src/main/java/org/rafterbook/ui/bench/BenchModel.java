package org.rafterbook.ui.bench;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Book;
import org.rafterbook.work.Job;
import org.rafterbook.work.Looked;
import org.rafterbook.work.Rigged;

/** What the Bench shows: a model, the version looked at, its settings as turned, and what they give. */
final class BenchModel {

    private final Book book;
    private final FxBackground background;
    private final DisplayUnits units;
    private final FxBackground.Slot loading = new FxBackground.Slot();
    private final FxBackground.Slot comparing = new FxBackground.Slot();
    private final Live<Looked> live;
    private final ReadOnlyObjectWrapper<BenchDesk.@Nullable Bench> bench = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<@Nullable Looked> preview = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<@Nullable Looked> beside = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<@Nullable SettingDef> picked = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyIntegerWrapper turns = new ReadOnlyIntegerWrapper();
    private final TurnedSettings turned = new TurnedSettings();
    private @Nullable String modelId;
    private @Nullable String versionId;
    private @Nullable String besideId;

    BenchModel(Book book, FxBackground background, DisplayUnits units) {
        this.units = units;
        this.book = book;
        this.background = background;
        live = new Live<>(background, preview::set);
    }

    ReadOnlyObjectProperty<BenchDesk.@Nullable Bench> bench() {
        return bench.getReadOnlyProperty();
    }

    /** The version looked at with what is turned or typed in a form, null while nothing is. */
    ReadOnlyObjectProperty<@Nullable Looked> preview() {
        return preview.getReadOnlyProperty();
    }

    /** The version compared with, null for none. */
    ReadOnlyObjectProperty<@Nullable Looked> beside() {
        return beside.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<@Nullable SettingDef> picked() {
        return picked.getReadOnlyProperty();
    }

    /** Counts every turn of a setting, before anything is computed of it. */
    ReadOnlyIntegerProperty turns() {
        return turns.getReadOnlyProperty();
    }

    Book book() {
        return book;
    }

    FxBackground background() {
        return background;
    }

    /** Loads the model again; what was turned and not kept stays turned. */
    void load() {
        String wanted = modelId;
        String version = versionId;
        background
                .call(progress -> book.bench().load(wanted, version, units))
                .in(loading)
                .then(loaded -> {
                    bench.set(loaded.orElse(null));
                    loaded.ifPresent(b -> {
                        modelId = b.now().model().id();
                        compare(besideId);
                    });
                    if (anyChanged()) {
                        look();
                    }
                });
    }

    /** Goes to a model as it is rigged now. */
    void choose(Model model) {
        choose(model.id());
    }

    private void choose(String id) {
        modelId = id;
        versionId = null;
        besideId = null;
        picked.set(null);
        letGo();
        load();
    }

    /** Looks at another version of the model; null for the one it is rigged as. */
    void lookAt(@Nullable Rigged version) {
        versionId = version == null ? null : version.version().id();
        letGo();
        load();
    }

    /** Compares with another version of the model; null for none. */
    void compare(@Nullable String version) {
        besideId = version;
        BenchDesk.Bench now = bench.get();
        if (now == null || version == null) {
            comparing.cancel();
            beside.set(null);
            return;
        }
        background
                .call(progress -> book.bench().look(book.riggings().version(version), now.in()))
                .in(comparing)
                .then(beside::set);
    }

    void pick(@Nullable SettingDef setting) {
        picked.set(setting);
    }

    /** The version looked at. */
    static Rigged shown(BenchDesk.Bench bench) {
        return bench.shown().version();
    }

    /** What the setting stands at now, as turned. */
    @Nullable
    Setting value(SettingDef setting) {
        BenchDesk.Bench now = bench.get();
        return now == null ? null : turned.value(shown(now), setting);
    }

    boolean isChanged(SettingDef setting) {
        return turned.holds(setting);
    }

    boolean anyChanged() {
        return turned.any();
    }

    /** Turns the picked setting by steps; 0.2 of a step is the finer turn. */
    void turn(double steps) {
        SettingDef setting = picked.get();
        Setting stands = setting == null ? null : value(setting);
        Double number = stands == null ? null : stands.number();
        Double step = setting == null ? null : setting.step();
        if (setting != null && number != null && step != null) {
            set(setting, Setting.of(TurnedSettings.within(setting, number + steps * step)));
        }
    }

    /** Sets a setting as typed or dragged. */
    void set(SettingDef setting, Setting value) {
        BenchDesk.Bench now = bench.get();
        if (now != null) {
            turned.set(shown(now), setting, value);
            look();
        }
    }

    /** Sets several settings at once. */
    void turnTo(Map<String, Setting> values) {
        turned.setAll(values);
        look();
    }

    private void look() {
        BenchDesk.Bench now = bench.get();
        if (now != null) {
            Map<String, Setting> values = turned.values();
            turns.set(turns.get() + 1);
            live.ask(progress -> book.bench().look(shown(now), values, now.in()));
        }
    }

    /** Looks at an airframe as it is typed in a form; null for the version's own again. */
    void look(@Nullable Airframe edited) {
        BenchDesk.Bench now = bench.get();
        if (now == null || edited == null) {
            live.forget();
            preview.set(null);
        } else {
            live.ask(progress -> book.bench().look(shown(now), edited, now.in()));
        }
    }

    /** Lets go what was turned. */
    void letGo() {
        turned.clear();
        live.forget();
        preview.set(null);
        turns.set(turns.get() + 1);
    }

    /** Sets the model to the version looked at with what was turned: its next flight flies on it. */
    void keep() {
        BenchDesk.Bench now = bench.get();
        if (now == null || !turned.any() && now.showsNow()) {
            return;
        }
        Map<String, Setting> values = turned.values();
        String from = shown(now).version().id();
        String name = shown(now).name();
        String why = turned.any()
                ? turned.words(shown(now))
                : shown(now).version().sketch() ? name + " taken to the Hall" : "back to " + name;
        enter(progress -> book.riggings().from(from, values, why, null), rigged -> lookAt(null));
    }

    /** Keeps what was turned as a version that is only compared until it is taken to the Hall. */
    void sketch() {
        BenchDesk.Bench now = bench.get();
        if (now != null) {
            Map<String, Setting> values = turned.values();
            enter(progress -> book.riggings().sketch(shown(now).version().id(), values, null), this::lookAt);
        }
    }

    /** Marks the version looked at as well-behaved, or takes the mark away. */
    void mark() {
        BenchDesk.Bench now = bench.get();
        if (now != null) {
            boolean good = !shown(now).version().markedGood();
            String version = shown(now).version().id();
            enter(
                    progress -> {
                        book.bench().mark(version, good);
                        return good;
                    },
                    done -> {});
        }
    }

    /** Enters something in the logbook; the bench is loaded again when it is kept. */
    <T> void enter(Job<? extends T> entry, Consumer<? super T> kept) {
        background.<T>call(entry).entry().then(value -> {
            load();
            kept.accept(value);
        });
    }

    /** The same with a taker for a refusal. */
    <T> void enter(Job<? extends T> entry, Consumer<? super T> kept, Consumer<Throwable> refused) {
        background.<T>call(entry).entry().otherwise(refused).then(value -> {
            load();
            kept.accept(value);
        });
    }

    /** The models in the order of the list, empty while nothing is loaded. */
    List<Model> models() {
        BenchDesk.Bench now = bench.get();
        return now == null ? List.of() : now.models();
    }
}
