package org.rafterbook.ui.start;

import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.KeyCap;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;

/** Something a flyer can begin with: its number, what it is, what it needs, and a button for each way to do it. */
final class OfferRow extends HBox {

    private static final PseudoClass PICKED = PseudoClass.getPseudoClass("picked");

    private final Action first;
    private final Button button;
    private final Label prose;
    private final VBox words;

    /**
     * @param number does the same as the first of the ways
     */
    OfferRow(Action number, String title, String says, Action first, Action... others) {
        this.first = first;
        getStyleClass().add("offer-row");
        prose = Words.prose(says);
        prose.setMinHeight(USE_PREF_SIZE);
        Label name = Lay.styled(Words.body(title), "offer-title");
        name.setWrapText(true);
        name.setMinHeight(USE_PREF_SIZE);
        words = Lay.grow(Lay.column(0, name, prose));
        words.setMinWidth(0);
        words.setAlignment(Pos.CENTER_LEFT);
        button = Buttons.secondary(first);
        button.setContentDisplay(ContentDisplay.RIGHT);
        KeyCap cap = Lay.styled(new KeyCap(number.key()), "offer-cap");
        number.at(cap);
        getChildren().addAll(cap, words, button);
        for (Action other : others) {
            getChildren().add(Buttons.secondary(other));
        }
    }

    /** Whether Enter does this one. */
    void picked(boolean picked) {
        pseudoClassStateChanged(PICKED, picked);
        button.getStyleClass().setAll("button", picked ? "primary" : "secondary");
        String key = first.hasKey() ? first.key() : picked ? "Enter" : "";
        button.setGraphic(key.isEmpty() ? null : new KeyCap(key));
    }

    void run() {
        first.run();
    }

    /** Shows something in the place of what it needs, such as a field for a name; null for that again. */
    void instead(@Nullable Node node) {
        words.getChildren().set(1, node == null ? prose : node);
    }
}
