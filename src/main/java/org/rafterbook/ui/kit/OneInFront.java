package org.rafterbook.ui.kit;

import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;

/**
 * Shows one of several nodes. What is left stays in the scene, hidden: taken out and put in again, all of it would have to
 * be styled anew, which takes longer than a frame.
 */
public final class OneInFront extends StackPane {

    /** Shows the node alone; nothing where it is null. */
    public void front(@Nullable Node node) {
        getChildren().forEach(other -> Lay.show(other, other == node));
        if (node != null && !getChildren().contains(node)) {
            getChildren().add(node);
        }
    }

    /** Takes in a node that is to be shown later, so that it is styled by then; nothing where it is null. */
    public void prepare(@Nullable Node node) {
        if (node != null && !getChildren().contains(node)) {
            Lay.show(node, false);
            getChildren().add(node);
        }
    }

    /** Lets go of a node that will not be shown again. */
    public void drop(@Nullable Node node) {
        getChildren().remove(node);
    }
}
