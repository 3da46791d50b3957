package org.rafterbook.ui.shell;

import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.kit.Lay;

/**
 * Where places show themselves, one at a time. A place that is left stays in the scene, hidden: taken out and put in
 * again, all of it would have to be styled anew, which takes longer than a frame.
 */
final class PlaceArea extends StackPane {

    /** Shows the node alone; nothing where it is null. */
    void front(@Nullable Node node) {
        getChildren().forEach(other -> Lay.show(other, other == node));
        if (node != null && !getChildren().contains(node)) {
            getChildren().add(node);
        }
    }

    /** Lets go of a node that will not be shown again. */
    void drop(@Nullable Node node) {
        getChildren().remove(node);
    }
}
