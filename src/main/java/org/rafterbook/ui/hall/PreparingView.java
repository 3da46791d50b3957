package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Version;
import org.rafterbook.power.Wind;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.SettingRow;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Parsed;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.Unit;
import org.rafterbook.work.MarginText;
import org.rafterbook.work.Prepared;
import org.rafterbook.work.Rigged;

/** The next flight: model, trim, margin, motor and wind; Space starts the watch, a typed time is as fast. */
final class PreparingView implements HallSheet {

    /** A model by name, or none. */
    private record ModelChoice(@Nullable String id, String name) {}

    private final HallModel model;
    private final Keys keys;
    private final QuantityFormat format;
    private final Label over = Words.small("");
    private final Label name = Words.head("");
    private final VersionSign sign = new VersionSign();
    private final Label changes = Words.aside("");
    private final VBox rows = new VBox();
    private final Label noSettings = Words.prose("This model has no settings yet; they are made on the Bench.");
    private final Map<String, SettingRow> rowOf = new HashMap<>();
    private final List<Action> letters = new ArrayList<>();
    private List<SettingDef> listed = List.of();
    private boolean firstModelAwaited;
    private final Label margin = Words.readout("–", 3);
    private final Label marginSays = Words.prose("");
    private final Label wind = Words.prose("");
    private final ChoiceField<ModelChoice> models = new ChoiceField<>("Model", ModelChoice::name);
    private final Field<String> newModel = Field.words("A new model's name");
    private final ChoiceField<Version> versions;
    private final HBox modelFold;
    private final HBox versionFold;
    private final Field<TypedValue> time;
    private final Label readBack = Words.readout("", 1);
    private final Field<String> value = Field.words("Value");
    private final Field<String> leaveOut = Field.words("Leave the next flight out, because");
    private final Label flagged = Words.accent("");
    private final Sheet sheet = new Sheet();
    private final Action relaunch;
    private final Action pickModel;

    PreparingView(HallModel model, Keys keys, DisplayUnits units) {
        this.model = model;
        this.keys = keys;
        this.format = new QuantityFormat(units);
        versions = new ChoiceField<>("Back to", v -> versionName(v));
        time = Field.quantity("Time by another watch", Quantity.TIME, units)
                .unit("")
                .large()
                .also(read -> ""); // it is read back beside it, larger
        Action start = keys.onPress("Space", "Start the watch", model::start);
        Action typeTime = keys.on("E", "Type a time", time::edit);
        time.key(typeTime);
        for (int digit = 0; digit <= 9; digit++) {
            String typed = String.valueOf(digit);
            keys.on(typed, "Type a time", () -> beginTime(typed));
        }
        keys.on("Enter", "Keep the typed time", this::keepTime);
        keys.on("Esc", "Leave the field", () -> time.getScene().getRoot().requestFocus());
        time.valueProperty().subscribe(v -> readBack.setText(v == null ? "" : v.readBack()));
        modelFold = Lay.row(12, models, Lay.grow(newModel));
        versionFold = Lay.row(12, Lay.grow(versions));
        pickModel = keys.on("M", "Model", this::toggleModels);
        Action backTo = keys.on("F", "Back to …", () -> {
            Lay.show(versionFold, true);
            versions.open();
        });
        models.onChosen(choice -> {
            Lay.show(modelFold, false);
            model.choose(choice.id());
            focusPage();
        });
        newModel.onKept(typed -> {
            if (typed != null && !typed.isBlank()) {
                model.addModel(typed, Inputs.refusal(newModel));
                newModel.fill("");
                Lay.show(modelFold, false);
                focusPage();
            }
        });
        versions.onChosen(version -> {
            Lay.show(versionFold, false);
            model.backTo(version.id(), versionName(version));
            focusPage();
        });
        Action left = keys.on("←", "Less of the picked setting", () -> model.turn(-1));
        Action right = keys.on("→", "More of the picked setting", () -> model.turn(1));
        left.enabledProperty().bind(model.settingProperty().isNotNull());
        right.enabledProperty().bind(model.settingProperty().isNotNull());
        Action typeValue = keys.on("D", "Type the picked setting", value::edit);
        typeValue.enabledProperty().bind(model.settingProperty().isNotNull());
        value.key(typeValue);
        value.onKept(this::keepValue);
        Action windStep =
                keys.on("N", "Motor and wind", () -> model.stateProperty().set(HallState.WINDING));
        keys.on("F3", "Motor and wind", () -> model.stateProperty().set(HallState.WINDING));
        keys.on("A", "Venue and air", () -> model.stateProperty().set(HallState.VISIT));
        relaunch = keys.on(
                "K",
                "Relaunch",
                () -> model.relaunchProperty().set(!model.relaunchProperty().get()));
        Action openLast = keys.on("O", "Last flight", () -> model.openNext(-1));
        Action inTheAir = keys.on("V", "Back to the flight in the air", model::done);
        inTheAir.enabledProperty().bind(javafx.beans.binding.Bindings.isNotEmpty(model.watches()));
        leaveOut.key(keys.on("X", "Leave the next flight out", leaveOut::edit));
        leaveOut.onKept(why -> model.leaveOutProperty().set(why == null || why.isBlank() ? null : why));
        keys.hint("Space", "start");
        keys.hint("0 … 9", "type a time");
        keys.hint("N", "motor and wind");
        keys.hint("M", "model");
        keys.hint("A", "venue and air");

        Lay.show(modelFold, false);
        Lay.show(versionFold, false);
        sheet.section(
                over,
                Lay.row(12, name, sign, changes, Lay.space(), Buttons.secondary(backTo), Buttons.secondary(pickModel)),
                modelFold,
                versionFold);
        changes.setMinWidth(0);
        HBox middle = new HBox(trim(), hair(), Lay.grow(rightSide(windStep, openLast)));
        sheet.add(Inputs.rolling(middle));
        sheet.section(Buttons.main(
                start,
                Words.body("Kept from the first instant."),
                Words.body("A wrong press is taken back with Ctrl+Z.")));
        model.settingProperty().subscribe(id -> rowOf.forEach((key, row) -> row.picked(key.equals(id))));
        model.relaunchProperty().subscribe(again -> showWind());
        model.leaveOutProperty().subscribe(why -> {
            flagged.setText(why == null ? "" : "The next flight will be left out: " + why);
            Lay.show(flagged, why != null);
            if (why == null) {
                leaveOut.fill("");
            }
        });
    }

    private static Node hair() {
        return Lay.styled(new javafx.scene.layout.Region(), "upright-hairline");
    }

    private VBox trim() {
        Sheet.Section head = new Sheet.Section("Trim", "letter, then ← or →");
        Lay.show(value, false);
        VBox column =
                new VBox(head, rows, Lay.styled(new VBox(noSettings), "pad-12"), Lay.styled(new VBox(value), "pad-12"));
        column.getStyleClass().add("trim-column");
        model.settingProperty().subscribe(id -> Lay.show(value, id != null));
        return column;
    }

    private VBox rightSide(Action windStep, Action openLast) {
        Sheet.Section marginPart = new Sheet.Section("Stability margin", "", Lay.row(16, margin, Lay.grow(marginSays)));
        margin.setMinWidth(Label.USE_PREF_SIZE);
        Sheet.Section windPart = new Sheet.Section(
                "Motor and wind",
                "",
                wind,
                Lay.row(12, Buttons.secondary(windStep), Buttons.secondary(relaunch), Buttons.secondary(openLast)));
        HBox timeRow = Lay.row(16, time, readBack);
        timeRow.setAlignment(javafx.geometry.Pos.TOP_LEFT);
        Sheet.Section typedPart = new Sheet.Section("Timed by somebody else", "Enter keeps it", timeRow);
        Sheet.Section flag = new Sheet.Section("Not to be counted", "before the time is known", leaveOut, flagged);
        return new VBox(marginPart, Lay.hairline(), windPart, Lay.hairline(), typedPart, Lay.hairline(), flag);
    }

    @Override
    public Node node() {
        return sheet;
    }

    private void focusPage() {
        if (sheet.getScene() != null) {
            sheet.getScene().getRoot().requestFocus();
        }
    }

    private void toggleModels() {
        boolean open = !modelFold.isVisible();
        Lay.show(modelFold, open);
        if (open) {
            if (models.box().getItems().size() > 1) {
                models.open();
            } else {
                newModel.edit();
            }
        }
    }

    private void beginTime(String digit) {
        time.edit();
        time.input().setText(digit);
        time.input().positionCaret(1);
    }

    private void keepTime() {
        TypedValue typed = time.value();
        if (typed != null && time.check()) {
            model.typed(typed, Inputs.refusal(time));
            if (time.refusal().isEmpty()) {
                time.fill("");
            }
        }
    }

    private void keepValue(@Nullable String typed) {
        HallData data = model.data();
        String id = model.settingProperty().get();
        if (typed == null || typed.isBlank() || data == null || data.prepared().rigged() == null) {
            return;
        }
        for (SettingDef def : data.prepared().rigged().settings()) {
            if (def.id().equals(id)) {
                Unit unit = Texts.unit(def);
                if (unit == null) {
                    model.set(Setting.of(typed), Inputs.refusal(value));
                } else {
                    Parsed<TypedValue> parsed = QuantityParser.typed(Quantity.valueOf(def.quantity()), unit)
                            .read(typed);
                    parsed.refusal().ifPresent(value::refuse);
                    parsed.toOptional()
                            .ifPresent(v -> model.set(new Setting(v.si(), null, v.asTyped()), Inputs.refusal(value)));
                }
            }
        }
    }

    private String versionName(Version version) {
        HallData data = model.data();
        Rigged rigged = data == null ? null : data.prepared().rigged();
        return (rigged == null ? "v" : rigged.model().letter()) + version.number();
    }

    @Override
    public void show(HallData data) {
        Prepared prepared = data.prepared();
        Rigged rigged = prepared.rigged();
        over.setText("Flight " + prepared.ordinal()
                + (prepared.last() == null ? "" : ", as the last one unless you change it"));
        name.setText(rigged == null ? "Just the time" : rigged.model().name() + " " + rigged.name());
        name.setMinWidth(Label.USE_PREF_SIZE);
        sign.show(rigged == null ? null : rigged.version(), MarkStyle.CLEAN);
        String changed = Texts.changes(prepared);
        changes.setText(rigged == null ? "give it a model now or after landing" : changed);
        List<ModelChoice> choices = new ArrayList<>();
        for (Model m : data.models()) {
            choices.add(new ModelChoice(m.id(), m.name()));
        }
        choices.add(new ModelChoice(null, "Just time a flight"));
        String now = rigged == null ? null : rigged.model().id();
        models.offer(
                choices,
                choices.stream()
                        .filter(c -> Objects.equals(c.id(), now))
                        .findFirst()
                        .orElse(null));
        if (data.models().isEmpty()) {
            Lay.show(modelFold, true);
        } else if (firstModelAwaited) {
            Lay.show(modelFold, false);
        }
        firstModelAwaited = data.models().isEmpty();
        Lay.show(models, !data.models().isEmpty());
        versions.offer(
                prepared.flown().stream()
                        .filter(v -> rigged == null
                                || !v.id().equals(rigged.version().id()))
                        .toList(),
                null);
        showSettings(prepared);
        showMargin(prepared);
        showWind();
    }

    private void showSettings(Prepared prepared) {
        Rigged rigged = prepared.rigged();
        List<SettingDef> settings = rigged == null ? List.of() : rigged.settings();
        if (!settings.equals(listed)) {
            listed = settings;
            letters.forEach(keys::forget);
            letters.clear();
            rowOf.clear();
            rows.getChildren().clear();
            for (SettingDef def : settings) {
                Action pick = pick(def);
                SettingRow row = new SettingRow(pick).step(Texts.step(def));
                row.picked(def.id().equals(model.settingProperty().get()));
                rowOf.put(def.id(), row);
                rows.getChildren().add(row);
            }
        }
        noSettings.setText(
                rigged == null
                        ? "The flight is timed without a model."
                        : "This model has no settings yet; they are made on the Bench.");
        Lay.show(noSettings.getParent(), settings.isEmpty());
        if (rigged != null) {
            for (SettingDef def : settings) {
                Setting now = rigged.values().get(def.id());
                Setting was = prepared.before() == null
                        ? null
                        : prepared.before().values().get(def.id());
                boolean same = now == null || was == null || now.same(was, 0);
                SettingRow row = rowOf.get(def.id());
                if (row != null) {
                    row.show(Texts.setting(def, now), same ? null : Texts.setting(def, was));
                }
            }
        }
    }

    private Action pick(SettingDef def) {
        String letter = def.keyLetter();
        Runnable what = () -> {
            model.settingProperty().set(def.id());
            value.fill("");
            focusPage();
        };
        if (letter == null || keys.find(letter) != null) {
            return keys.action(def.label(), what);
        }
        Action action = keys.on(letter, def.label(), what);
        letters.add(action);
        return action;
    }

    private void showMargin(Prepared prepared) {
        MarginText.Answer answer = prepared.margin();
        MarginText.Answer before = prepared.marginBefore();
        boolean known = answer != null && answer.fraction() != null;
        margin.setText(known ? Texts.margin(answer, 1) + " %" : "–");
        String was = before != null && before.fraction() != null && prepared.before() != null
                ? prepared.before().name() + ": " + Texts.margin(before, 1) + " %"
                : "";
        marginSays.setText(answer == null ? "no model" : known ? was : answer.missing());
    }

    private void showWind() {
        HallData data = model.data();
        if (data == null) {
            return;
        }
        Prepared prepared = data.prepared();
        Wind again = prepared.again();
        relaunch.enabledProperty().set(again != null);
        if (model.relaunchProperty().get() && again != null) {
            wind.setText("Relaunch on the wind of the last flight, without winding again.");
            return;
        }
        Wind on = prepared.wind();
        if (on != null) {
            String motor = prepared.motor() == null ? "Motor" : prepared.motor().name();
            wind.setText(motor + ": " + Texts.turns(Texts.atLaunch(on)) + " turns at launch, "
                    + format.text(Quantity.TORQUE, on.launchTorqueNm()) + " launch torque");
        } else {
            String hint = prepared.last() == null || prepared.last().wind() == null
                    ? ""
                    : " Last time " + Texts.turns(Texts.atLaunch(prepared.last().wind())) + " turns, "
                            + format.text(
                                    Quantity.TORQUE, prepared.last().wind().launchTorqueNm()) + ".";
            wind.setText("No wind written down."
                    + (prepared.proposed() == null
                            ? ""
                            : " " + prepared.proposed().name() + " is of the same size and has rested.")
                    + hint);
        }
    }
}
