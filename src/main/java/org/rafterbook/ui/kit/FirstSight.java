package org.rafterbook.ui.kit;

import java.util.Objects;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.util.Subscription;
import org.jspecify.annotations.Nullable;

/**
 * Does something once, when a node is first seen: it is in a scene, and neither it nor what it stands in is hidden.
 * Controls are put into their forms so, since skins of what nobody sees would be most of what the first frame costs.
 */
final class FirstSight {

    private final Runnable what;
    private @Nullable Subscription waiting;
    private boolean done;

    FirstSight(Node node, Runnable what) {
        this.what = what;
        ObservableValue<Boolean> shown = node.sceneProperty()
                .flatMap(scene -> node.parentProperty())
                .flatMap(Node::visibleProperty)
                .flatMap(held -> node.visibleProperty().map(own -> held && own));
        Subscription subscription = shown.subscribe(seen -> {
            if (Objects.equals(seen, true)) {
                now();
            }
        });
        if (done) {
            subscription.unsubscribe();
        } else {
            waiting = subscription;
        }
    }

    /** Does it now, unless it is done. */
    void now() {
        if (!done) {
            done = true;
            if (waiting != null) {
                waiting.unsubscribe();
            }
            what.run();
        }
    }
}
