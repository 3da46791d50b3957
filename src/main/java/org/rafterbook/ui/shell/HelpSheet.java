package org.rafterbook.ui.shell;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.KeyCap;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;

/** All keys of the place and of the window, over the window until Esc. */
final class HelpSheet extends StackPane {

    HelpSheet(Runnable close) {
        getStyleClass().add("help-ground");
        setOnMouseClicked(event -> close.run());
        Lay.show(this, false);
    }

    void open(String place, Keys here, Keys everywhere) {
        Sheet sheet = new Sheet();
        sheet.getStyleClass().add("help");
        sheet.setMaxHeight(USE_PREF_SIZE);
        sheet.section("Keys in " + place, "Esc closes this", list(here.actions().stream()));
        sheet.section("Everywhere", "hold Alt to see every key where it works", list(everywhere.actions().stream()));
        sheet.section(Words.prose("Single letters work while no text field has the cursor; fields for numbers let them"
                + " through. Tab goes from part to part, Enter presses the button that has the frame."));
        getChildren().setAll(sheet);
        Lay.show(this, true);
        requestFocus();
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
            keys.forEach(key -> caps.getChildren().add(new KeyCap(key)));
            VBox text = Lay.column(0, Words.body(label));
            HBox entry = Lay.row(8, caps, text);
            entry.getStyleClass().add("help-entry");
            pane.getChildren().add(entry);
        });
        return pane;
    }
}
