package org.rafterbook.ui.bench;

import java.util.HashMap;
import java.util.Map;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Surface;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.chart.MarginBar;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.EmptyBox;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.SettingRow;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.shell.Dialogs;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Book;
import org.rafterbook.work.MarginAnswer;

/** The Bench: rig strip, airframe to scale, settings and margin. */
public final class BenchPlace implements Place {

    private final Tools tools;
    private final Book book;
    private final BenchModel model;
    private final Keys keys;
    private final ReadOnlyObjectWrapper<Keys> keysNow;
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final StackPane root = new StackPane();
    private final BorderPane bench = new BorderPane();
    private final ChoiceField<org.rafterbook.airframe.Model> models = new ChoiceField<>("Model", m -> m.name());
    private final RigStrip strip = new RigStrip();
    private final AirframeDrawing drawing = new AirframeDrawing();
    private final Label margin = Words.readout("–", 1);
    private final Label verdict = Words.prose("");
    private final MarginBar bar = new MarginBar();
    private final VBox settings = Lay.column(0);
    private final VBox means = Lay.column(4);
    private final Map<String, Action> picks = new HashMap<>();
    private final Map<String, SettingRow> rows = new HashMap<>();
    private final Action keep;
    private final EmptyBox empty;
    private final EmptyBox noGeometry;
    private final Field<String> newModel = Field.words("Name of a new model");
    private @Nullable Subscription listening;

    public BenchPlace(Tools tools, Book book) {
        this.tools = tools;
        this.book = book;
        this.model = new BenchModel(book, tools.background());
        keys = tools.keys();
        keysNow = new ReadOnlyObjectWrapper<>(keys);
        Action next = keys.on("M", "Next model", model::next);
        keep = keys.on("Enter", "Change the trim", model::keep);
        Action letGo = keys.on("Esc", "Let go", model::letGo);
        keys.on("→", "Turn up", () -> model.turn(1));
        keys.on("←", "Turn down", () -> model.turn(-1));
        keys.on("Shift+→", "Finer up", () -> model.turn(0.2));
        keys.on("Shift+←", "Finer down", () -> model.turn(-0.2));
        Action sheet = keys.on("O", "Read an airframe sheet", this::readSheet);
        Action mark = keys.on("K", "Mark as well-behaved", model::mark);
        keys.hint("← →", "turn it");
        keys.hint("Shift", "finer");
        keys.hint("Enter", "change the trim");
        keys.hint("O", "airframe sheet");
        empty = new EmptyBox(
                "No model yet.", "A model needs only a name to fly; its drawing and margin come from a sheet.", sheet);
        noGeometry = new EmptyBox(
                "No geometry.",
                "The margin needs span and chord, places and a balance: read an airframe sheet.",
                sheet);
        models.onChosen(model::choose);
        newModel.onKept(name -> {
            if (name != null && !name.isBlank()) {
                model.addModel(name);
                newModel.fill("");
            }
        });
        margin.setAccessibleText("Stability margin");
        margin.setMinWidth(Label.USE_PREF_SIZE);
        margin.setWrapText(false);
        Sheet left = new Sheet();
        left.section(models, newModel, Buttons.link(next));
        left.section("Rig strip", "newest on top");
        left.add(Lay.grow(strip));
        left.section(Buttons.primary(keep), Buttons.secondary(letGo), Buttons.secondary(mark), Buttons.link(sheet));
        Sheet right = new Sheet();
        right.section("Stability margin", "", Lay.row(12, margin, Lay.grow(verdict)), bar);
        right.add(settings);
        right.section("What it means", "", means);
        left.setPrefWidth(260);
        left.setMinWidth(220);
        right.setPrefWidth(310);
        right.setMinWidth(280);
        StackPane middle = new StackPane(drawing, noGeometry);
        BorderPane.setMargin(middle, new javafx.geometry.Insets(0, 12, 0, 12));
        middle.setMinWidth(0);
        bench.setLeft(left);
        bench.setCenter(middle);
        bench.setRight(right);
        root.getStyleClass().add("pad-16");
        root.getChildren().addAll(bench, new VBox(empty));
        model.bench().subscribe(this::loaded);
        model.preview().subscribe(p -> show());
        model.picked().subscribe(p -> show());
    }

    private void readSheet() {
        tools.dialogs()
                .open("Airframe sheet", new Dialogs.FileKind("Airframe sheet", java.util.List.of("*.json")))
                .ifPresent(model::readSheet);
    }

    private void loaded(BenchDesk.@Nullable Bench now) {
        Lay.show(empty.getParent(), now == null);
        Lay.show(bench, true);
        if (now == null) {
            subtitle.set("");
            return;
        }
        models.offer(now.models(), now.now().model());
        strip.show(now.strip());
        subtitle.set(now.now().model().name() + ", version " + now.now().name()
                + (now.now().version().markedGood() ? ", well-behaved" : ""));
        picks.values().forEach(keys::forget);
        picks.clear();
        rows.clear();
        settings.getChildren().clear();
        for (SettingDef setting : now.now().settings()) {
            String letter = setting.keyLetter();
            Action pick = letter == null
                    ? keys.action(setting.label(), () -> model.pick(setting))
                    : keys.on(letter, setting.label(), () -> model.pick(setting));
            picks.put(setting.id(), pick);
            SettingRow row = new SettingRow(pick).narrow();
            rows.put(setting.id(), row);
            settings.getChildren().add(row);
        }
        show();
    }

    private void show() {
        BenchDesk.Bench now = model.bench().get();
        if (now == null) {
            return;
        }
        BenchDesk.Preview preview = model.preview().get();
        SettingDef picked = model.picked().get();
        for (SettingDef setting : now.now().settings()) {
            SettingRow row = rows.get(setting.id());
            if (row != null) {
                Setting before = now.now().values().get(setting.id());
                row.show(
                        BenchWords.value(setting, model.value(setting)),
                        model.isChanged(setting) ? BenchWords.value(setting, before) : null);
                row.picked(picked != null && picked.id().equals(setting.id()));
            }
        }
        Airframe geometry = now.now().geometry();
        MarginAnswer answer = preview == null ? now.margin() : preview.margin();
        boolean turned = preview != null && model.anyChanged();
        drawing.show(turned && preview != null ? preview.airframe() : geometry, turned ? geometry : null, answer);
        Lay.show(noGeometry, geometry == null);
        keep.enabledProperty().set(model.anyChanged());
        margin.setText(BenchWords.percent(answer.margin()));
        verdict.setText(verdict(now, answer, turned));
        bar.show(new MarginBar.Margin(
                percent(answer.margin()),
                turned ? percent(now.margin().margin()) : null,
                percent(answer.band()),
                percent(now.now().model().wishedLow()),
                percent(now.now().model().wishedHigh())));
        means.getChildren().clear();
        mean("Balance", BenchWords.millimetres(answer.balanceM()));
        mean("Neutral point", BenchWords.millimetres(answer.neutralPointM()));
        mean("Mean chord", BenchWords.millimetres(answer.meanChordM()));
        mean("Ready to fly", mass(answer.massKg()));
        mean("Area of all wings", area(answer.areaM2()));
        mean("Longer span² / area", plain(answer.aspectRatio()));
        answer.liftShare()
                .forEach((name, share) -> mean("Lift of " + name, QuantityFormat.rounded(share * 100, 0) + " %"));
        if (geometry != null) {
            decalage(turned && preview != null && preview.airframe() != null ? preview.airframe() : geometry);
        }
        if (answer.neutralPointM() != null) {
            means.getChildren().add(note("Neutral point by " + MarginAnswer.LATTICE + "."));
        }
        if (answer.closedFormNote() != null) {
            means.getChildren().add(note(answer.closedFormNote()));
        }
    }

    private void decalage(Airframe airframe) {
        Surface wing = first(airframe, org.rafterbook.airframe.Role.WING);
        Surface tail = first(airframe, org.rafterbook.airframe.Role.TAILPLANE);
        if (wing != null && tail != null) {
            double degrees = Math.toDegrees(wing.incidenceRad() - tail.incidenceRad());
            mean("Decalage, follows", QuantityFormat.rounded(degrees, 2) + "°");
        }
    }

    private static @Nullable Surface first(Airframe airframe, org.rafterbook.airframe.Role role) {
        return airframe.surfaces().stream()
                .filter(s -> s.role() == role)
                .findFirst()
                .orElse(null);
    }

    private static String verdict(BenchDesk.Bench now, MarginAnswer answer, boolean turned) {
        Double is = answer.margin();
        if (is == null) {
            return answer.missing() == null ? "The margin cannot be told." : answer.missing();
        }
        if (is < 0) {
            return "Unstable by " + BenchWords.percent(-is) + ".";
        }
        MarginAnswer good = now.goodMargin();
        Double was = good == null ? now.margin().margin() : good.margin();
        String than = good == null || now.good() == null ? "before" : now.good().name() + ", well-behaved";
        if (was == null || (good == null && !turned) || answer.meanChordM() == null) {
            return "Mark a version as well-behaved to compare with it.";
        }
        double points = (is - was) * 100;
        double mm = (is - was) * answer.meanChordM() * 1000;
        return QuantityFormat.rounded(Math.abs(points), 1) + " points (" + QuantityFormat.rounded(Math.abs(mm), 1)
                + " mm) " + (points < 0 ? "less" : "more") + " than " + than;
    }

    private void mean(String name, String value) {
        means.getChildren().add(Lay.row(8, Words.aside(name), Lay.space(), Words.body(value)));
    }

    private static Label note(String text) {
        Label label = Words.hint(text);
        label.setWrapText(true);
        return label;
    }

    private static @Nullable Double percent(@Nullable Double fraction) {
        return fraction == null ? null : fraction * 100;
    }

    private static String mass(@Nullable Double kg) {
        return kg == null ? QuantityFormat.UNKNOWN : QuantityFormat.rounded(kg * 1000, 2) + " g";
    }

    private static String area(@Nullable Double m2) {
        return m2 == null ? QuantityFormat.UNKNOWN : QuantityFormat.rounded(m2 * 100, 2) + " dm²";
    }

    private static String plain(@Nullable Double value) {
        return value == null ? QuantityFormat.UNKNOWN : QuantityFormat.rounded(value, 2);
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public ObservableValue<Keys> keys() {
        return keysNow.getReadOnlyProperty();
    }

    @Override
    public ReadOnlyStringProperty subtitle() {
        return subtitle.getReadOnlyProperty();
    }

    @Override
    public void shown() {
        listening = book.onChange(() -> javafx.application.Platform.runLater(model::load));
        model.load();
    }

    @Override
    public void hidden() {
        if (listening != null) {
            listening.cancel();
            listening = null;
        }
    }
}
