package org.rafterbook.ui.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.geometry.Orientation;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.KeyCap;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.RollingPane;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;

/** All keys of the place and of the window, over the window until Esc. */
final class HelpSheet extends StackPane {

    private static final double LINE = 0.1;
    private static final double PAGE = 0.5;
    private static final List<String> DIGITS = List.of("0", "1", "2", "3", "4", "5", "6", "7", "8", "9");

    private final Rolling rolling = new Rolling();

    HelpSheet(Runnable close) {
        getStyleClass().add("help-ground");
        setOnMouseClicked(event -> close.run());
        setOnKeyPressed(event -> roll(event.getCode()));
        Lay.show(this, false);
    }

    void open(String place, Keys here, Keys everywhere) {
        Sheet sheet = new Sheet();
        sheet.getStyleClass().add("help");
        sheet.setMaxHeight(USE_PREF_SIZE);
        rolling.setContent(new VBox(
                new Sheet.Section("Keys in " + place, "Esc closes this", list(here.actions().stream())),
                Lay.hairline(),
                new Sheet.Section(
                        "Everywhere",
                        "hold Alt to see every key where it works",
                        list(everywhere.actions().stream()))));
        rolling.setVvalue(0);
        sheet.add(Lay.grow(rolling));
        Label how = Words.prose("Single letters work while no text field has the cursor; fields for numbers let them"
                + " through. Tab goes from part to part, Enter presses the button that has the frame.");
        how.setMinHeight(USE_PREF_SIZE);
        sheet.section(how);
        getChildren().setAll(sheet);
        Lay.show(this, true);
        requestFocus();
    }

    /** Where the window is too low for all keys the arrows go through them. */
    private void roll(KeyCode key) {
        double by = switch (key) {
            case DOWN -> LINE;
            case UP -> -LINE;
            case PAGE_DOWN -> PAGE;
            case PAGE_UP -> -PAGE;
            default -> 0;
        };
        rolling.setVvalue(Math.max(0, Math.min(1, rolling.getVvalue() + by)));
    }

    void close() {
        Lay.show(this, false);
    }

    /** One entry for each thing that can be done, with all its keys. */
    private static FlowPane list(Stream<Action> actions) {
        Map<String, List<String>> keysOf = new LinkedHashMap<>();
        actions.forEach(action -> keysOf.merge(
                action.label(),
                List.of(action.key()),
                (a, b) -> Stream.concat(a.stream(), b.stream()).toList()));
        FlowPane pane = new FlowPane();
        pane.getStyleClass().add("help-list");
        keysOf.forEach((label, keys) -> {
            HBox caps = Lay.row(4);
            caps.getStyleClass().add("help-caps");
            caps(keys).forEach(key -> caps.getChildren().add(new KeyCap(key)));
            Label text = Words.body(label);
            text.setWrapText(true);
            text.setMinHeight(USE_PREF_SIZE);
            HBox entry = Lay.row(8, caps, Lay.grow(text));
            entry.getStyleClass().add("help-entry");
            pane.getChildren().add(entry);
        });
        return pane;
    }

    /** The digits as one, where all of them do the same. */
    private static List<String> caps(List<String> keys) {
        if (!keys.containsAll(DIGITS)) {
            return keys;
        }
        List<String> shorter = new ArrayList<>(keys);
        shorter.removeAll(DIGITS);
        shorter.add("0 … 9");
        return shorter;
    }

    /** As high as all keys where there is room for them, else rolled. */
    private static final class Rolling extends RollingPane {

        private Rolling() {
            setFitToWidth(true);
            setHbarPolicy(ScrollBarPolicy.NEVER);
            setFocusTraversable(false);
            setMinSize(0, 0);
        }

        @Override
        public Orientation getContentBias() {
            return Orientation.HORIZONTAL;
        }

        @Override
        protected double computePrefHeight(double width) {
            return getContent().prefHeight(width) + snappedTopInset() + snappedBottomInset();
        }
    }
}
