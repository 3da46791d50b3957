package org.rafterbook.ui.kit;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;

/** A row that is folded away until it is asked for; its controls get their skins only then, which shortens the start. */
public final class Fold extends HBox {

    private final List<Node> content;

    public Fold(Node... content) {
        this.content = List.of(content);
        getStyleClass().add("gap-12");
        setAlignment(Pos.CENTER_LEFT);
        show(false);
    }

    public void show(boolean open) {
        if (open && getChildren().isEmpty()) {
            getChildren().addAll(content);
        }
        Lay.show(this, open);
    }
}
