package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.SettingRow;
import org.rafterbook.ui.kit.SettingWords;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Parsed;
import org.rafterbook.work.Prepared;
import org.rafterbook.work.Rigged;
import org.rafterbook.work.SettingInput;

/** The model's settings: a letter picks one, the arrows turn it, or its value is typed. */
final class TrimPart {

    private final PreparingModel model;
    private final Keys keys;
    private final VBox rows = new VBox();
    private final Label none = Words.prose("");
    private final Field<String> value = Field.words("Value");
    private final Map<String, SettingRow> rowOf = new HashMap<>();
    private final List<Action> letters = new ArrayList<>();
    private final VBox node;
    private List<SettingDef> listed = List.of();

    TrimPart(PreparingModel model, Keys keys, Followed followed) {
        this.model = model;
        this.keys = keys;
        Action left = keys.on("←", "Less of the picked setting", () -> model.turn(-1));
        Action right = keys.on("→", "More of the picked setting", () -> model.turn(1));
        Action type = keys.on("D", "Type the picked setting", value::edit);
        for (Action action : List.of(left, right, type)) {
            action.enabledProperty().bind(model.settingProperty().isNotNull());
        }
        value.key(type);
        value.onKept(this::keep);
        Lay.show(value, false);
        node = new VBox(
                new Sheet.Section("Trim", "letter, then ← or →"),
                Lay.rolling(
                        new VBox(rows, Lay.styled(new VBox(none), "pad-12"), Lay.styled(new VBox(value), "pad-12"))));
        node.setMinHeight(0);
        followed.follow(model.settingProperty(), this::pick);
    }

    VBox node() {
        return node;
    }

    private void pick(@Nullable String id) {
        rowOf.forEach((key, row) -> row.picked(key.equals(id)));
        Lay.show(value, id != null);
        value.unit(listed.stream()
                .filter(d -> d.id().equals(id))
                .map(SettingDef::unit)
                .findFirst()
                .orElse(""));
    }

    private void keep(@Nullable String typed) {
        String id = model.settingProperty().get();
        for (SettingDef def : listed) {
            if (typed != null && !typed.isBlank() && def.id().equals(id)) {
                Parsed<Setting> parsed = SettingInput.read(def, typed);
                parsed.refusal().ifPresent(value::refuse);
                parsed.toOptional().ifPresent(v -> model.set(v, value::refuse));
            }
        }
    }

    void show(Prepared prepared) {
        Rigged rigged = prepared.rigged();
        list(rigged == null ? List.of() : rigged.settings());
        none.setText(
                rigged == null
                        ? "The flight is timed without a model."
                        : "This model has no settings yet; they are made on the Bench.");
        Lay.show(none.getParent(), listed.isEmpty());
        if (rigged != null) {
            Rigged before = prepared.before();
            for (SettingDef def : listed) {
                Setting now = rigged.values().get(def.id());
                Setting was = before == null ? null : before.values().get(def.id());
                boolean same = now == null || was == null || now.same(was, 0);
                SettingRow row = rowOf.get(def.id());
                if (row != null) {
                    row.show(SettingWords.value(def, now), same ? null : SettingWords.value(def, was));
                }
            }
        }
    }

    private void list(List<SettingDef> settings) {
        if (settings.equals(listed)) {
            return;
        }
        listed = settings;
        letters.forEach(keys::forget);
        letters.clear();
        rowOf.clear();
        rows.getChildren().clear();
        for (SettingDef def : settings) {
            SettingRow row = new SettingRow(letter(def)).step(SettingWords.step(def));
            row.picked(def.id().equals(model.settingProperty().get()));
            rowOf.put(def.id(), row);
            rows.getChildren().add(row);
        }
    }

    private Action letter(SettingDef def) {
        String letter = def.keyLetter();
        Runnable what = () -> {
            model.settingProperty().set(def.id());
            value.fill("");
            HallForm.leave(node);
        };
        if (letter == null || keys.find(letter) != null) {
            return keys.action(def.label(), what);
        }
        Action action = keys.on(letter, def.label(), what);
        letters.add(action);
        return action;
    }
}
