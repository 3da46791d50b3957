package org.rafterbook.ui.action;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;

/**
 * The keys that work now in a place, or in one state of it: what each does, and which of them the key line names. A
 * place with several states has one of these for each.
 *
 * <pre>
 * Keys keys = new Keys(errors);
 * Action start = keys.on("Space", "Start the watch", this::start);
 * keys.hint("Space", "start");
 * Button button = Buttons.main(start);
 * </pre>
 */
public final class Keys {

    private final Errors errors;
    private final Map<String, Action> byKey = new LinkedHashMap<>();
    private final ObservableList<KeyHint> line = FXCollections.observableArrayList();

    public Keys(Errors errors) {
        this.errors = errors;
    }

    /**
     * Gives a key something to do.
     *
     * @param key a letter, a digit, another character, or one of {@code Space Enter Esc Backspace Del Tab ← → ↑ ↓ PgUp
     *     PgDn Home End F1 .. F12}, with {@code Ctrl+}, {@code Shift+} before it where wanted
     * @throws IllegalArgumentException if the key already does something here
     */
    public Action on(String key, String label, Runnable what) {
        return onPress(key, label, press -> what.run());
    }

    /** The same for what needs the instant of the press. */
    public Action onPress(String key, String label, Consumer<Press> what) {
        Action action = new Action(key, label, what, errors);
        if (byKey.putIfAbsent(KeyNames.canonical(key), action) != null) {
            throw new IllegalArgumentException("key " + key + " is dealt twice");
        }
        return action;
    }

    /** An action without a key. */
    public Action action(String label, Runnable what) {
        return new Action("", label, press -> what.run(), errors);
    }

    /** Names keys in the line at the foot; the first five are shown, help comes last by itself. */
    public void hint(String caps, String says) {
        line.add(new KeyHint(caps, says));
    }

    /** The entries of the key line, to be changed while shown if need be. */
    public ObservableList<KeyHint> line() {
        return line;
    }

    /** Every action that has a key, in the order made: what help lists. */
    public Collection<Action> actions() {
        return List.copyOf(byKey.values());
    }

    /** The action of a key as {@link KeyNames} spells it, null if it has none. */
    public @Nullable Action find(String key) {
        return byKey.get(KeyNames.canonical(key));
    }

    /** Takes away the action, for instance of a setting that is gone. */
    public void forget(Action action) {
        byKey.values().remove(action);
    }
}
