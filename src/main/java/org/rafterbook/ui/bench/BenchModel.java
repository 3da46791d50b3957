package org.rafterbook.ui.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.exchange.AirframeSheets;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Book;

/** What the Bench shows: the model, the settings as turned, and the margin they give. */
final class BenchModel {

    private final Book book;
    private final FxBackground background;
    private final FxBackground.Slot loading = new FxBackground.Slot();
    private final FxBackground.Slot looking = new FxBackground.Slot();
    private final ReadOnlyObjectWrapper<BenchDesk.@Nullable Bench> bench = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<BenchDesk.@Nullable Preview> preview = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<@Nullable SettingDef> picked = new ReadOnlyObjectWrapper<>();
    private final Map<String, Setting> changed = new HashMap<>();
    private @Nullable String modelId;

    BenchModel(Book book, FxBackground background) {
        this.book = book;
        this.background = background;
    }

    ReadOnlyObjectProperty<BenchDesk.@Nullable Bench> bench() {
        return bench.getReadOnlyProperty();
    }

    /** The trim as turned, null while nothing is turned. */
    ReadOnlyObjectProperty<BenchDesk.@Nullable Preview> preview() {
        return preview.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<@Nullable SettingDef> picked() {
        return picked.getReadOnlyProperty();
    }

    /** Loads the model again; what was turned and not kept is let go. */
    void load() {
        String wanted = modelId;
        background.call(progress -> book.bench().load(wanted)).in(loading).then(loaded -> {
            changed.clear();
            preview.set(null);
            bench.set(loaded.orElse(null));
            loaded.ifPresent(b -> modelId = b.now().model().id());
        });
    }

    void choose(Model model) {
        modelId = model.id();
        picked.set(null);
        load();
    }

    /** The next model of the logbook. */
    void next() {
        BenchDesk.Bench now = bench.get();
        if (now != null) {
            List<Model> models = now.models();
            int at = models.indexOf(now.now().model());
            choose(models.get((at + 1) % models.size()));
        }
    }

    void pick(SettingDef setting) {
        picked.set(setting);
    }

    /** What the setting stands at now, as turned. */
    @Nullable
    Setting value(SettingDef setting) {
        Setting turned = changed.get(setting.id());
        BenchDesk.Bench now = bench.get();
        return turned != null || now == null ? turned : now.now().values().get(setting.id());
    }

    boolean isChanged(SettingDef setting) {
        return changed.containsKey(setting.id());
    }

    boolean anyChanged() {
        return !changed.isEmpty();
    }

    /** Turns the picked setting by steps; 0.2 of a step is the finer turn. */
    void turn(double steps) {
        SettingDef setting = picked.get();
        BenchDesk.Bench now = bench.get();
        if (setting == null || now == null) {
            return;
        }
        Setting stands = value(setting);
        Double number = stands == null ? null : stands.number();
        Double step = setting.step();
        if (number != null && step != null) {
            set(setting, Setting.of(number + steps * step));
        }
    }

    /** Sets a setting as typed. */
    void set(SettingDef setting, Setting value) {
        BenchDesk.Bench now = bench.get();
        if (now == null) {
            return;
        }
        Setting before = now.now().values().get(setting.id());
        if (before != null && before.same(value, 0)) {
            changed.remove(setting.id());
        } else {
            changed.put(setting.id(), value);
        }
        Map<String, Setting> turned = Map.copyOf(changed);
        background
                .call(progress -> book.bench().preview(now.now(), turned))
                .in(looking)
                .then(preview::set);
    }

    /** Lets go what was turned. */
    void letGo() {
        load();
    }

    /** Sets the model to what was turned: its next flight flies on it. */
    void keep() {
        BenchDesk.Bench now = bench.get();
        if (now == null || changed.isEmpty()) {
            return;
        }
        Map<String, Setting> turned = Map.copyOf(changed);
        String why = now.now().settings().stream()
                .filter(s -> turned.containsKey(s.id()))
                .map(s -> s.label() + " " + BenchWords.value(s, turned.get(s.id())))
                .reduce((a, b) -> a + ", " + b)
                .orElse("trim");
        background
                .call(progress -> book.riggings().trim(now.now().model().id(), turned, why, null))
                .then(rigged -> load());
    }

    /** Adds a model that has only a name. */
    void addModel(String name) {
        background.call(progress -> book.riggings().addModel(name)).then(this::choose);
    }

    /** Marks the version as well-behaved, or takes the mark away. */
    void mark() {
        BenchDesk.Bench now = bench.get();
        if (now != null) {
            background
                    .call(progress -> {
                        book.bench()
                                .mark(
                                        now.now().version().id(),
                                        !now.now().version().markedGood());
                        return true;
                    })
                    .then(done -> load());
        }
    }

    /** Takes an airframe sheet in. */
    void readSheet(java.nio.file.Path file) {
        background
                .call(progress -> book.sheets().take(AirframeSheets.read(file)))
                .then(taken -> choose(taken.model()));
    }
}
