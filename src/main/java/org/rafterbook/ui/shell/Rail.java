package org.rafterbook.ui.shell;

import java.util.EnumMap;
import java.util.Map;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.draw.AppSign;
import org.rafterbook.ui.draw.Icon;
import org.rafterbook.ui.draw.IconView;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.look.Token;

/** The slim rail at the left: the app's sign, the five places, text size and theme at the foot. */
final class Rail extends VBox {

    private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");
    private static final double ICON_EM = 1.92;

    private final Map<PlaceId, Button> buttons = new EnumMap<>(PlaceId.class);
    private final Map<PlaceId, IconView> icons = new EnumMap<>(PlaceId.class);

    Rail(Map<PlaceId, Action> go, Action textSize, Action theme) {
        getStyleClass().add("rail");
        StackPane sign = new StackPane(new AppSign());
        sign.getStyleClass().add("sign");
        getChildren().add(sign);
        go.forEach((place, action) -> {
            IconView icon = new IconView(place.icon(), ICON_EM);
            Button button = item(action, icon, place.key());
            icons.put(place, icon);
            buttons.put(place, button);
            getChildren().add(button);
        });
        getChildren().addAll(Lay.space(), foot(textSize, Icon.TEXT, "Text"), foot(theme, Icon.THEME, "Theme"));
    }

    void here(PlaceId place) {
        buttons.forEach((id, button) -> button.pseudoClassStateChanged(HERE, id == place));
        icons.forEach((id, icon) -> icon.ink(id == place ? Token.INK : Token.INK_2));
    }

    private static Button foot(Action action, Icon icon, String word) {
        Button button = item(action, new IconView(icon, ICON_EM), "");
        button.setText(word);
        button.getStyleClass().add("foot");
        return button;
    }

    private static Button item(Action action, IconView icon, String key) {
        Button button = new Button(action.label());
        Label label = new Label(key);
        label.getStyleClass().add("rail-key");
        StackPane graphic = new StackPane(icon, label);
        StackPane.setAlignment(label, Pos.TOP_RIGHT);
        graphic.getStyleClass().add("rail-graphic");
        button.setGraphic(graphic);
        button.setContentDisplay(ContentDisplay.TOP);
        button.setMnemonicParsing(false);
        button.setMaxWidth(Double.MAX_VALUE);
        button.getStyleClass().setAll("rail-item");
        button.setAccessibleText(action.label());
        button.setAccessibleHelp("Key " + action.key());
        button.setOnAction(event -> action.run());
        action.at(key.isEmpty() ? button : label);
        return button;
    }
}
