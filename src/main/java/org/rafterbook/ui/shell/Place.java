package org.rafterbook.ui.shell;

import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Keys;

/**
 * One of the five places. The shell makes it at the first visit and keeps it; it asks for its parts once and shows
 * them. All is called on the JavaFX thread.
 */
public interface Place {

    /** The content below the rule; it lies on the desk and brings its own sheets and page edge. */
    Node node();

    /** The keys that work now; a place with several states changes the value. */
    ObservableValue<Keys> keys();

    /** What stands beside the place's name in the head. */
    ObservableValue<String> subtitle();

    /** The name in the head where it is not the place's own, as at the first start. */
    default @Nullable ObservableValue<String> title() {
        return null;
    }

    /** Figures or buttons at the right of the head; may change while shown. */
    default ObservableList<Node> figures() {
        return FXCollections.emptyObservableList();
    }

    /** The graduated rule along the top, null where the content brings its own. */
    default @Nullable Node rule() {
        return null;
    }

    /** What stands at the right of the key line instead of what was kept last, null for that. */
    default @Nullable Node footNote() {
        return null;
    }

    /** Comes into sight: attach to the view model and load. */
    default void shown() {}

    /** Goes out of sight: detach. */
    default void hidden() {}

    /** A subtitle that never changes. */
    static ObservableValue<String> always(String text) {
        return new ReadOnlyStringWrapper(text).getReadOnlyProperty();
    }
}
