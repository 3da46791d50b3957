package org.rafterbook.ui.kit;

import javafx.scene.layout.HBox;
import javafx.scene.text.TextFlow;
import org.rafterbook.ui.action.Action;

/** Where there is nothing yet: one sentence what will appear here and one action. */
public final class EmptyBox extends HBox {

    public EmptyBox(String lead, String sentence, Action... actions) {
        TextFlow text = Words.led(lead, sentence);
        getStyleClass().add("empty-box");
        getChildren().add(Lay.grow(text));
        for (Action action : actions) {
            getChildren().add(Buttons.secondary(action));
        }
        setAccessibleText(lead + " " + sentence);
    }
}
