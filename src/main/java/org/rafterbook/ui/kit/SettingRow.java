package org.rafterbook.ui.kit;

import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;

/**
 * A setting of the model: key, name, the old value quietly, the value (bold once changed), and at the right end its step
 * or, while it is picked, the two keys that turn it. A computed row has no action and cannot be picked.
 */
public final class SettingRow extends HBox {

    private static final PseudoClass CHANGED = PseudoClass.getPseudoClass("changed");
    private static final PseudoClass PICKED = PseudoClass.getPseudoClass("picked");

    private final String name;
    private final Label label;
    private final Label was = Words.hint("");
    private final Label value = Words.body("");
    private final Label step = Words.hint("");
    private final HBox end = new HBox();
    private final HBox turn = Lay.row(4, new KeyCap("←"), new KeyCap("→"));

    /** A row for a setting; the action picks it. */
    public SettingRow(Action pick) {
        this(pick.label(), pick);
    }

    /** A row for a consequence, which follows from settings. */
    public static SettingRow computed(String name) {
        return new SettingRow(name, null);
    }

    private SettingRow(String name, @Nullable Action pick) {
        this.name = name;
        getStyleClass().add("setting-row");
        Label cap = pick == null ? new Label() : new KeyCap(pick.key());
        HBox place = new HBox(cap);
        place.getStyleClass().add("cap-place");
        label = Words.body(name);
        label.getStyleClass().add("name");
        value.getStyleClass().add("value");
        value.setMinWidth(USE_PREF_SIZE);
        end.getChildren().addAll(step, turn);
        end.getStyleClass().add("end");
        getChildren().addAll(place, label, Lay.space(), was, value, end);
        if (pick == null) {
            getStyleClass().add("computed");
            Lay.show(end, false);
        } else {
            pick.at(this);
            setFocusTraversable(true);
            setAccessibleRole(AccessibleRole.BUTTON);
            setOnMouseClicked(event -> {
                requestFocus();
                pick.run();
            });
            setOnKeyPressed(event -> {
                if (event.getCode() == KeyCode.ENTER) {
                    pick.run();
                    event.consume();
                }
            });
        }
        picked(false);
    }

    /** Shows the value; {@code before} is null as long as it is unchanged. */
    public SettingRow show(String now, @Nullable String before) {
        value.setText(now);
        was.setText(before == null ? "" : "was " + before);
        pseudoClassStateChanged(CHANGED, before != null);
        setAccessibleText(name + ", " + now + (before == null ? "" : ", was " + before));
        return this;
    }

    /** Shows the usual step, such as "step 0.25°". */
    public SettingRow step(String text) {
        step.setText(text);
        return this;
    }

    /** Whether the arrow keys turn this setting now. */
    public void picked(boolean picked) {
        pseudoClassStateChanged(PICKED, picked);
        Lay.show(turn, picked);
        Lay.show(step, !picked);
    }

    /** No column for step and keys, for narrow lists; a long name takes two lines. */
    public SettingRow narrow() {
        getStyleClass().add("narrow");
        Lay.show(end, false);
        label.setWrapText(true);
        was.setMinWidth(USE_PREF_SIZE);
        return this;
    }
}
