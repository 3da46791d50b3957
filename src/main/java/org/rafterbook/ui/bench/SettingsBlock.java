package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
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
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Rigged;

/** The settings of the version looked at, each under its own letter, which is also how it is picked. */
final class SettingsBlock {

    private final BenchModel model;
    private final Keys keys;
    private final VBox rows = Lay.column(0);
    private final Map<String, SettingRow> bySetting = new HashMap<>();
    private final List<Action> picks = new ArrayList<>();
    private final VBox typing = Lay.column(0);
    private List<SettingDef> listed = List.of();
    private @Nullable Field<Setting> typed;
    private String typedFor = "";
    private boolean asked;

    SettingsBlock(BenchModel model, Keys keys) {
        this.model = model;
        this.keys = keys;
        typing.getStyleClass().add("typed-setting");
        Lay.show(typing, false);
    }

    VBox node() {
        return rows;
    }

    /** Deals the rows anew where the model or its settings are others. */
    void deal(BenchDesk.Bench bench) {
        List<SettingDef> wanted = BenchModel.shown(bench).ownSettings();
        if (wanted.equals(listed)) {
            return;
        }
        listed = wanted;
        SettingDef picked = model.picked().get();
        if (picked != null && !listed.contains(picked)) {
            model.pick(null); // of a surface that was taken off
        }
        picks.forEach(keys::forget);
        picks.clear();
        bySetting.clear();
        for (SettingDef setting : listed) {
            String letter = setting.keyLetter();
            boolean free = letter != null && keys.find(letter) == null;
            Action pick = letter != null && free
                    ? keys.on(letter, setting.label(), () -> model.pick(setting))
                    : keys.action(setting.label(), () -> model.pick(setting));
            if (free) {
                picks.add(pick);
            }
            bySetting.put(setting.id(), new SettingRow(pick).narrow());
        }
        typedFor = "";
    }

    void show(BenchDesk.Bench bench) {
        Rigged shown = BenchModel.shown(bench);
        SettingDef picked = model.picked().get();
        List<Node> nodes = new ArrayList<>();
        for (SettingDef setting : listed) {
            SettingRow row = bySetting.get(setting.id());
            if (row == null) {
                continue;
            }
            Setting before = shown.values().get(setting.id());
            boolean changed = model.isChanged(setting);
            row.show(
                    SettingWords.value(setting, model.value(setting)),
                    changed ? SettingWords.value(setting, before) : null);
            boolean here = picked != null && picked.id().equals(setting.id());
            row.picked(here);
            nodes.add(row);
            if (here && asked) {
                nodes.add(typing);
            }
        }
        if (!nodes.equals(rows.getChildren())) {
            rows.getChildren().setAll(nodes);
        }
        typing(picked);
    }

    /** The picked setting may also be typed. */
    private void typing(@Nullable SettingDef picked) {
        String id = picked == null ? "" : picked.id();
        Lay.show(typing, picked != null);
        if (picked == null || id.equals(typedFor)) {
            if (picked != null && typed != null && !typed.input().isFocused()) {
                typed.fill("");
            }
            return;
        }
        typedFor = id;
        asked = false;
        Field<Setting> field = SettingWords.field(picked.label() + ", typed", picked);
        Double low = picked.low();
        Double high = picked.high();
        field.refuseIf(
                value -> value.number() != null && TurnedSettings.within(picked, value.number()) != value.number(),
                value -> "The slider goes from " + end(picked, low) + " to " + end(picked, high) + ".");
        field.onKept(value -> {
            if (value != null) {
                model.set(picked, value);
            }
        });
        typed = field;
        typing.getChildren().setAll(field);
    }

    private static String end(SettingDef setting, @Nullable Double end) {
        return end == null ? "anywhere" : SettingWords.value(setting, Setting.of(end));
    }

    /** Whether the picked setting is being typed. */
    boolean isTyping() {
        return typed != null && typed.input().isFocused();
    }

    /** Takes the field away again. */
    void close() {
        asked = false;
        BenchDesk.Bench bench = model.bench().get();
        if (bench != null) {
            show(bench);
        }
    }

    /** Shows the field of the picked setting with the cursor in it. */
    void type() {
        BenchDesk.Bench bench = model.bench().get();
        if (bench != null && model.picked().get() != null) {
            asked = true;
            show(bench);
            if (typed != null) {
                typed.edit();
            }
        }
    }
}
