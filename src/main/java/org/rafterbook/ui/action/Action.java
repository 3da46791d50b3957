package org.rafterbook.ui.action;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;

/**
 * Something the user can do, by its key or by whatever control stands for it: made by {@link Keys}, handed to buttons,
 * fields and rows of the kit, which show its key and run it.
 */
public final class Action {

    private final String key;
    private final StringProperty label;
    private final BooleanProperty enabled = new SimpleBooleanProperty(this, "enabled", true);
    private final Consumer<Press> what;
    private final Errors errors;
    private final List<Node> targets = new ArrayList<>();

    Action(String key, String label, Consumer<Press> what, Errors errors) {
        this.key = key;
        this.label = new SimpleStringProperty(this, "label", label);
        this.what = what;
        this.errors = errors;
    }

    /** The key as shown, such as {@code P}, {@code Space} or {@code Ctrl+E}; empty if the action has none. */
    public String key() {
        return key;
    }

    public boolean hasKey() {
        return !key.isEmpty();
    }

    /** What it does, in the words of its button and of the help. */
    public StringProperty labelProperty() {
        return label;
    }

    public String label() {
        return label.get();
    }

    /** Whether it can be done now; its key and controls follow. */
    public BooleanProperty enabledProperty() {
        return enabled;
    }

    /** Names the node over whose top edge the key is shown while Alt is held. */
    public Action at(Node target) {
        targets.add(target);
        return this;
    }

    /** The nodes the key stands over while Alt is held. */
    public List<Node> targets() {
        return List.copyOf(targets);
    }

    /** Does it, as pressed now. */
    public void run() {
        run(Press.now());
    }

    /** Does it unless it is disabled; whatever it throws goes to the errors. */
    public void run(Press press) {
        if (enabled.get()) {
            errors.guard(() -> what.accept(press));
        }
    }
}
