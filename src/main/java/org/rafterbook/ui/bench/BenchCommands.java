package org.rafterbook.ui.bench;

import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.KeyHint;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Looked;
import org.rafterbook.work.Rigged;

/** What can be done on the Bench while no form is open, each under its key. */
final class BenchCommands {

    private final BenchContext context;
    private final BenchModel model;
    private final AirframePane drawing;
    private final Keys keys;
    private final Action keep;
    private final Action compare;
    private final Action compareSketches;
    private final Action airframe;
    private final Action choose;
    private final Action newModel;
    private final Action readSheet;
    private final Action mark;
    private final Action drop;
    private final SettingsPage settings;
    private final List<Action> ofAModel;
    private @Nullable AirframePage airframePage;
    private @Nullable StripPane strip;

    BenchCommands(BenchContext context, AirframePane drawing) {
        this.context = context;
        this.model = context.model();
        this.drawing = drawing;
        keys = context.keys();
        SheetFiles files = new SheetFiles(context);
        keep = keys.on("Enter", "Change the trim", this::keep);
        keys.on("Esc", "Let go what was turned", this::letGo);
        keys.on("→", "Turn up", () -> model.turn(1));
        keys.on("←", "Turn down", () -> model.turn(-1));
        keys.on("Shift+→", "Finer up", () -> model.turn(0.2));
        keys.on("Shift+←", "Finer down", () -> model.turn(-0.2));
        keys.on("↑", "The version above", () -> step(-1));
        keys.on("↓", "The version below", () -> step(1));
        choose = keys.on("M", "Model", this::choose);
        newModel = keys.on("N", "New model", () -> context.open().accept(new NewModelForm(context)));
        airframe = keys.on("A", "Airframe and measurements", () -> openAirframe(files));
        keys.on("K", "Keep as a sketch", model::sketch);
        compare = keys.on("C", "Compare", this::compare);
        compareSketches =
                keys.on("X", "Compare at equal margin", () -> context.open().accept(new SketchTable(context)));
        keys.on("F", "Flights of this version", () -> context.open().accept(new FlightsPage(context)));
        mark = keys.on("V", "Mark as well-behaved", model::mark);
        readSheet = keys.on("O", "Read an airframe sheet", files::read);
        drop = keys.on("Del", "Take the sketch away", this::drop);
        keys.on(
                "D",
                "Dimensions",
                () -> drawing.drawing().dimensions(!drawing.drawing().dimensions()));
        keys.on("+", "Closer", () -> drawing.zoom(1.25));
        keys.on("-", "Further off", () -> drawing.zoom(0.8));
        Action more = keys.on("H", "More ways", () -> context.open().accept(new PlacementPage(context)));
        settings = new SettingsPage(context, keys, more);
        ofAModel = keys.actions().stream()
                .filter(a -> a != newModel && a != readSheet)
                .toList();
        nothing();
    }

    /** Without a model there is nothing to turn, measure or compare. */
    void nothing() {
        ofAModel.forEach(a -> a.enabledProperty().set(false));
        keys.line().setAll(new KeyHint("N", "new model"), new KeyHint("O", "read a sheet"));
    }

    SettingsPage settingsPage() {
        return settings;
    }

    StripPane strip(ZoneId zone) {
        StripPane made = new StripPane(model, zone, choose, compareSketches, List.of(keep, compare, airframe));
        strip = made;
        return made;
    }

    Action newModel() {
        return newModel;
    }

    Action readSheet() {
        return readSheet;
    }

    Action airframe() {
        return airframe;
    }

    /** Words and keys follow what is looked at. */
    void follow(BenchDesk.Bench bench) {
        Rigged shown = BenchModel.shown(bench);
        ofAModel.forEach(a -> a.enabledProperty().set(true));
        keep.labelProperty().set(keeping(bench, shown));
        mark.labelProperty().set(shown.version().markedGood() ? "Take the mark away" : "Mark as well-behaved");
        drop.enabledProperty().set(shown.version().sketch());
        compare.labelProperty().set(model.beside().get() == null ? "Compare with " + other(bench) : "Compare no more");
        compare.enabledProperty().set(otherId(bench) != null || model.beside().get() != null);
        String letters = shown.ownSettings().stream()
                .map(SettingDef::keyLetter)
                .filter(l -> l != null && !l.isEmpty())
                .limit(8)
                .collect(Collectors.joining(" "));
        keys.line()
                .setAll(
                        new KeyHint(
                                letters.isEmpty() ? "A" : letters, letters.isEmpty() ? "airframe" : "pick a setting"),
                        new KeyHint("← →", "turn it"),
                        new KeyHint("E", "type it"),
                        new KeyHint("+ −", "zoom"),
                        new KeyHint("D", "dimensions"));
    }

    private String keeping(BenchDesk.Bench bench, Rigged shown) {
        if (shown.version().sketch()) {
            return "Take " + shown.name() + " to the Hall";
        }
        return model.anyChanged() || bench.showsNow() ? "Change the trim" : "Set back to " + shown.name();
    }

    private void keep() {
        BenchDesk.Bench bench = model.bench().get();
        if (bench == null || settings.leaveWish()) {
            return;
        }
        settings.leaveFields();
        boolean toHall = BenchModel.shown(bench).version().sketch();
        model.keep();
        if (toHall) {
            context.tools().showing().set(PlaceId.HALL);
        }
    }

    private void letGo() {
        BenchDesk.Bench bench = model.bench().get();
        if (settings.leaveFields()) {
            return; // the first Esc only leaves the field
        }
        if (model.anyChanged() || bench == null || bench.showsNow()) {
            model.pick(null);
            model.letGo();
        } else {
            model.lookAt(null);
        }
    }

    private void step(int step) {
        if (strip != null) {
            strip.step(step);
        }
    }

    private void choose() {
        if (strip != null) {
            strip.open();
        }
    }

    private void openAirframe(SheetFiles files) {
        AirframePage page = airframePage;
        if (page == null) {
            page = new AirframePage(context, files);
            airframePage = page;
        }
        BenchDesk.Bench bench = model.bench().get();
        if (bench != null
                && !bench.showsNow()
                && !BenchModel.shown(bench).version().sketch()) {
            model.lookAt(null);
        }
        context.open().accept(page);
    }

    private void drop() {
        BenchDesk.Bench bench = model.bench().get();
        if (bench != null && BenchModel.shown(bench).version().sketch()) {
            String id = BenchModel.shown(bench).version().id();
            model.enter(
                    progress -> {
                        context.book().riggings().dropSketch(id);
                        return true;
                    },
                    done -> model.lookAt(null));
        }
    }

    private void compare() {
        BenchDesk.Bench bench = model.bench().get();
        if (bench != null) {
            model.compare(model.beside().get() == null ? otherId(bench) : null);
        }
    }

    /** The version compared with: the one of now, else the well-behaved one, else the one before. */
    private static @Nullable String otherId(BenchDesk.Bench bench) {
        Rigged other = otherVersion(bench);
        return other == null ? null : other.version().id();
    }

    private static String other(BenchDesk.Bench bench) {
        Rigged other = otherVersion(bench);
        return other == null ? "another" : other.name();
    }

    private static @Nullable Rigged otherVersion(BenchDesk.Bench bench) {
        String shown = BenchModel.shown(bench).version().id();
        if (!bench.showsNow()) {
            return bench.now();
        }
        Looked good = bench.good();
        if (good != null && !good.version().version().id().equals(shown)) {
            return good.version();
        }
        return bench.strip().stream()
                .map(BenchDesk.Occasion::rigged)
                .filter(r -> !r.version().id().equals(shown))
                .findFirst()
                .orElse(null);
    }
}
