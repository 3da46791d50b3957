package org.rafterbook.ui.look;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.ObservableList;
import javafx.scene.Scene;

/** The look chosen by the flyer; a scene dressed by it follows every change at once. */
public final class Look {

    private static final String NO_CAPS = "no-caps";
    private static final String STAND_IN_FONT = "stand-in-font";

    private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(this, "theme", Theme.LIGHT);
    private final ObjectProperty<TextSize> textSize = new SimpleObjectProperty<>(this, "textSize", TextSize.NORMAL);
    private final BooleanProperty capsShown = new SimpleBooleanProperty(this, "capsShown", true);

    public ObjectProperty<Theme> themeProperty() {
        return theme;
    }

    public ObjectProperty<TextSize> textSizeProperty() {
        return textSize;
    }

    /** Whether key caps stand in buttons and rows; the key line at the foot stays either way. */
    public BooleanProperty capsShownProperty() {
        return capsShown;
    }

    /** Turns to the next theme. */
    public void turn() {
        theme.set(theme.get().next());
    }

    /** Turns to the next text size, from the largest back to the normal one. */
    public void resize() {
        textSize.set(textSize.get().next());
    }

    /** Dresses the scene now, before it is shown, and again at each change. */
    public void dress(Scene scene) {
        theme.subscribe(() -> wear(scene));
        textSize.subscribe(() -> wear(scene));
        capsShown.subscribe(() -> wear(scene));
        wear(scene);
    }

    private void wear(Scene scene) {
        dress(scene, theme.get(), textSize.get());
        ObservableList<String> classes = scene.getRoot().getStyleClass();
        classes.remove(NO_CAPS);
        if (!capsShown.get()) {
            classes.add(NO_CAPS);
        }
    }

    /** Dresses a scene once, for a picture or a test. */
    public static void dress(Scene scene, Theme theme, TextSize size) {
        scene.setFill(theme.tokens().of(Token.DESK));
        scene.getStylesheets().setAll(List.of(Theme.resource("common.css"), theme.stylesheet()));
        // style classes, not an inline style: that would load JavaFX's parser at the start
        ObservableList<String> classes = scene.getRoot().getStyleClass();
        for (TextSize each : TextSize.values()) {
            classes.remove(each.styleClass());
        }
        classes.add(size.styleClass());
        classes.remove(STAND_IN_FONT);
        if (Fonts.standIn()) {
            classes.add(STAND_IN_FONT);
        }
    }
}
