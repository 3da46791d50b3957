package org.rafterbook.ui;

import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.OpenedBook;

/** Which logbook is open, in the head of the window; a click opens another. */
final class LogbookName extends VBox {

    LogbookName(OpenedBook opened, Action openAnother) {
        getStyleClass().add("logbook-name");
        String name = opened.name();
        boolean own = opened.kind() == OpenedBook.Kind.OWN;
        getChildren().addAll(Words.small("Logbook"), own ? Words.body(name) : Words.accent(name));
        setMinWidth(USE_PREF_SIZE);
        setAccessibleText("Logbook " + opened.book().file());
        setAccessibleHelp("Key " + openAnother.key() + " opens another");
        setOnMouseClicked(event -> openAnother.run());
        openAnother.at(this);
    }
}
