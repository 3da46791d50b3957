package org.rafterbook.ui.shell;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.KeyHint;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.FittingRow;
import org.rafterbook.ui.kit.KeyCap;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;

/** The line at the foot: at most six keys, help last; at the right what was kept and what undo would undo. */
final class KeyLine extends HBox {

    private static final int SHOWN = 5;

    private final FittingRow hints = new FittingRow();
    private final HBox end = new HBox();
    private final HBox kept;
    private final HBox last;
    private final WeakInvalidationListener weakly;
    private final InvalidationListener changed = observable -> fill();

    /** Entries once made, for when their place is shown again. */
    private final Map<KeyHint, HBox> made = new HashMap<>();

    private List<KeyHint> shown = List.of();
    private @Nullable Keys keys;

    KeyLine(Action help, Action undo, Kept status) {
        last = entry(new KeyHint(help.key(), "help"));
        last.setOnMouseClicked(event -> help.run());
        weakly = new WeakInvalidationListener(changed);
        getStyleClass().add("key-line");
        hints.getStyleClass().add("hints");
        end.setMinWidth(USE_PREF_SIZE);
        kept = keptSide(undo, status);
        // what was kept or undone just now is told even where a place has a note of its own there
        status.saysProperty()
                .addListener((says, before, now) -> end.getChildren().setAll(kept));
        getChildren().addAll(Lay.grow(hints), end);
    }

    private static HBox keptSide(Action undo, Kept status) {
        Label says = Words.aside("");
        says.textProperty().bind(status.saysProperty());
        HBox tick = Lay.row(4, Lay.styled(new Label("✓"), "good-tick"), says);
        status.saysProperty().subscribe(text -> Lay.show(tick, !text.isEmpty()));
        Label what = Words.aside("");
        what.textProperty().bind(status.undoesProperty().map(text -> text.isEmpty() ? "" : "undo “" + text + "”"));
        HBox undoing = Lay.row(4, new KeyCap(undo.key()), what);
        undoing.setOnMouseClicked(event -> undo.run());
        status.undoesProperty().subscribe(text -> Lay.show(undoing, !text.isEmpty()));
        HBox side = new HBox(tick, undoing);
        side.getStyleClass().add("hints");
        return side;
    }

    void show(Keys now, @Nullable Node footNote) {
        if (keys != null) {
            keys.line().removeListener(weakly);
        }
        keys = now;
        now.line().addListener(weakly);
        end.getChildren().setAll(footNote == null ? kept : footNote);
        fill();
    }

    private void fill() {
        List<KeyHint> now =
                keys == null ? List.of() : keys.line().stream().limit(SHOWN).toList();
        if (now.equals(shown) && !hints.getChildren().isEmpty()) {
            return;
        }
        shown = now;
        List<HBox> entries = now.stream()
                .map(hint -> made.computeIfAbsent(hint, KeyLine::entry))
                .toList();
        hints.getChildren().setAll(entries);
        hints.getChildren().add(last);
    }

    private static HBox entry(KeyHint hint) {
        return Lay.row(4, new KeyCap(hint.caps()), Words.aside(hint.says()));
    }
}
