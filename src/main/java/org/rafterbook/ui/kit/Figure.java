package org.rafterbook.ui.kit;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** A value under its name, as at the right of the head. */
public final class Figure extends VBox {

    private final Label value;

    public Figure(String name, String value) {
        this.value = Words.body(value);
        getStyleClass().add("figure-box");
        getChildren().addAll(Words.small(name), this.value);
    }

    /** The value in bold. */
    public Figure strong() {
        value.getStyleClass().add("bold");
        return this;
    }

    public void show(String text) {
        value.setText(text);
    }
}
