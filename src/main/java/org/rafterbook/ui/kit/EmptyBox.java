package org.rafterbook.ui.kit;

import javafx.scene.layout.HBox;
import javafx.scene.text.TextFlow;
import org.rafterbook.ui.action.Action;

/** Where there is nothing yet: one sentence what will appear here and one action beside it, or several below it. */
public final class EmptyBox extends HBox {

    public EmptyBox(String lead, String sentence, Action... actions) {
        TextFlow text = Words.led(lead, sentence);
        getStyleClass().add("empty-box");
        HBox buttons = Lay.row(12);
        for (Action action : actions) {
            buttons.getChildren().add(Buttons.secondary(action));
        }
        getChildren().add(Lay.grow(actions.length > 1 ? Lay.column(12, text, buttons) : text));
        if (actions.length == 1) {
            getChildren().add(buttons);
        }
        setAccessibleText(lead + " " + sentence);
    }
}
