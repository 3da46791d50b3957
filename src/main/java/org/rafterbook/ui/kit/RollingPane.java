package org.rafterbook.ui.kit;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Skin;

/**
 * A pane that rolls its content. The content is painted straight: the control's own skin keeps a picture of it, which has to
 * be painted and copied anew with each change in it.
 */
public class RollingPane extends ScrollPane {

    public RollingPane() {}

    public RollingPane(Node content) {
        super(content);
    }

    @Override
    protected Skin<?> createDefaultSkin() {
        Skin<?> skin = super.createDefaultSkin();
        getChildren().stream()
                .filter(child -> child.getStyleClass().contains("viewport"))
                .forEach(viewport -> viewport.setCache(false));
        return skin;
    }
}
