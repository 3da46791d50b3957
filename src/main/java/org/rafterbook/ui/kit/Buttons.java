package org.rafterbook.ui.kit;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.text.TextAlignment;
import org.rafterbook.ui.action.Action;

/** Buttons; each stands for an {@link Action}, shows its label and key and is shown its key over while Alt is held. */
public final class Buttons {

    private Buttons() {}

    /** An ordinary button. */
    public static Button secondary(Action action) {
        Button button = make(action, "secondary");
        if (action.hasKey()) {
            button.setGraphic(new KeyCap(action.key()));
            button.setContentDisplay(ContentDisplay.RIGHT);
        }
        return button;
    }

    /** The main action at ordinary size, once on a sheet or form. */
    public static Button primary(Action action) {
        Button button = secondary(action);
        button.getStyleClass().setAll("button", "primary");
        return button;
    }

    /** A quiet link. */
    public static Button link(Action action) {
        return make(action, "link");
    }

    /** The one large main action of a screen, with what it means at its right end. */
    public static Button main(Action action, Label... says) {
        Button button = make(action, "main");
        button.textProperty().unbind();
        button.setText("");
        Label label = new Label();
        label.getStyleClass().add("main-label");
        label.textProperty().bind(action.labelProperty());
        label.setMinWidth(Label.USE_PREF_SIZE);
        HBox content = Lay.row(16, label, Lay.space());
        content.getStyleClass().add("main-content");
        if (action.hasKey()) {
            content.getChildren().add(0, Lay.styled(new KeyCap(action.key()), "large-cap"));
        }
        if (says.length > 0) {
            var lines = Lay.column(0, (Node[]) says);
            lines.setAlignment(Pos.CENTER_RIGHT);
            for (Label line : says) {
                line.setWrapText(true);
                line.setTextAlignment(TextAlignment.RIGHT);
            }
            content.getChildren().add(lines);
        }
        content.setMaxWidth(Double.MAX_VALUE);
        content.prefWidthProperty().bind(button.widthProperty().subtract(2));
        button.setGraphic(content);
        button.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        button.setMinWidth(0);
        button.setMaxWidth(Double.MAX_VALUE);
        return button;
    }

    private static Button make(Action action, String role) {
        Button button = new Button();
        button.textProperty().bind(action.labelProperty());
        button.accessibleTextProperty().bind(action.labelProperty());
        button.setAccessibleHelp(action.hasKey() ? "Key " + action.key() : null);
        button.getStyleClass().add(role);
        button.disableProperty().bind(action.enabledProperty().not());
        button.setOnAction(event -> action.run());
        button.setMnemonicParsing(false);
        button.setMinWidth(Button.USE_PREF_SIZE);
        action.at(button);
        return button;
    }
}
