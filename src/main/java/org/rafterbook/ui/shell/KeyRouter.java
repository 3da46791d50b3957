package org.rafterbook.ui.shell;

import java.util.HashSet;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.KeyNames;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.action.LetsLettersThrough;
import org.rafterbook.ui.action.Press;
import org.rafterbook.ui.action.TakesArrows;

/**
 * Brings each key press to the action it belongs to: first among the keys of the place, then among those of the window.
 * Sees keys before the controls do and leaves to them what is theirs: characters typed into a field, arrows in a list.
 */
final class KeyRouter {

    private static final Set<String> ARROWS = Set.of("←", "→", "↑", "↓", "PgUp", "PgDn", "Home", "End");
    private static final Set<String> FIELD_KEYS =
            Set.of("Space", "Backspace", "Del", "Tab", "←", "→", "↑", "↓", "PgUp", "PgDn", "Home", "End", "Ctrl+Z");
    private static final Set<String> FIELD_EDITING =
            Set.of("A", "C", "V", "X", "Z", "Shift+Z", "←", "→", "Home", "End");

    private final Supplier<Keys> here;
    private final Keys everywhere;
    private final BooleanSupplier wrong;
    private final CapsOverlay caps;
    private final Set<KeyCode> down = new HashSet<>();
    private boolean swallowTyped;

    /**
     * @param wrong whether an error is in sight, which Esc takes away before it does what the place has for it
     */
    KeyRouter(Supplier<Keys> here, Keys everywhere, BooleanSupplier wrong, CapsOverlay caps) {
        this.here = here;
        this.everywhere = everywhere;
        this.wrong = wrong;
        this.caps = caps;
    }

    void listen(Scene scene) {
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> pressed(scene, event));
        scene.addEventFilter(KeyEvent.KEY_TYPED, event -> typed(scene, event));
        scene.addEventFilter(KeyEvent.KEY_RELEASED, this::released);
        scene.windowProperty().flatMap(Window::focusedProperty).orElse(false).subscribe(focused -> {
            down.clear();
            caps.hide();
        });
    }

    private void pressed(Scene scene, KeyEvent event) {
        Press press = Press.now();
        swallowTyped = false;
        boolean repeated = !down.add(event.getCode());
        if (event.getCode() == KeyCode.ALT || event.getCode() == KeyCode.ALT_GRAPH) {
            if (event.getCode() == KeyCode.ALT) {
                caps.show(here.get(), everywhere);
            }
            return;
        }
        caps.hide();
        String key = KeyNames.pressed(event);
        if (key == null || event.isAltDown()) {
            return;
        }
        // a key held down must not start and stop the watch; only arrows repeat
        if (repeated && !ARROWS.contains(key)) {
            if (find(key) != null && !belongsToFocus(scene.getFocusOwner(), key, event)) {
                swallowTyped = true;
                event.consume();
            }
            return;
        }
        Node focus = scene.getFocusOwner();
        if (belongsToFocus(focus, key, event)) {
            return;
        }
        if (key.equals("Enter") && focus instanceof TextInputControl) {
            focus.fireEvent(new ActionEvent(focus, focus)); // the field keeps its value first
        }
        if (run(key, press)) {
            swallowTyped = true;
            event.consume();
        }
    }

    private void typed(Scene scene, KeyEvent event) {
        if (swallowTyped) {
            event.consume(); // it belongs to a press that was an action; the focus may have moved into a field
            return;
        }
        String key = KeyNames.typed(event);
        if (key != null
                && !(scene.getFocusOwner() instanceof TextInputControl)
                && !isOpenList(scene.getFocusOwner())
                && run(key, Press.now())) {
            event.consume();
        }
    }

    private void released(KeyEvent event) {
        down.remove(event.getCode());
        if (event.getCode() == KeyCode.ALT) {
            caps.hide();
        }
    }

    private @Nullable Action find(String key) {
        Action action =
                key.equals("Esc") && wrong.getAsBoolean() ? null : here.get().find(key);
        return action == null ? everywhere.find(key) : action;
    }

    private boolean run(String key, Press press) {
        Action action = find(key);
        if (action == null || !action.enabledProperty().get()) {
            return false;
        }
        action.run(press);
        return true;
    }

    private static boolean belongsToFocus(@Nullable Node focus, String key, KeyEvent event) {
        if (focus instanceof TextInputControl) {
            return belongsToField(focus, key, event);
        }
        if (isOpenList(focus)) {
            return key.length() == 1 || ARROWS.contains(key) || key.equals("Enter") || key.equals("Space");
        }
        if (focus instanceof ButtonBase && key.equals("Enter")) {
            ((ButtonBase) focus).fire();
            event.consume();
            return true;
        }
        boolean list = focus instanceof TableView
                || focus instanceof ListView
                || focus instanceof ComboBoxBase
                || focus instanceof Slider
                || focus instanceof ToggleButton
                || focus instanceof TakesArrows;
        // Enter stays the main action; an open list was asked before
        boolean opens = focus instanceof ComboBoxBase && key.equals("Space");
        return list && ARROWS.contains(key) || opens;
    }

    /** Letters go to the first choice that begins with them, not to the place. */
    private static boolean isOpenList(@Nullable Node focus) {
        return focus instanceof ComboBoxBase<?> box && box.isShowing();
    }

    private static boolean belongsToField(Node field, String key, KeyEvent event) {
        if (event.isControlDown()) {
            return FIELD_EDITING.contains(key.substring("Ctrl+".length()));
        }
        boolean character = key.length() == 1;
        if (character && field instanceof LetsLettersThrough passes) {
            char letter = key.charAt(0);
            return !Character.isLetter(letter) || passes.takes(Character.toLowerCase(letter));
        }
        return character || FIELD_KEYS.contains(key) || key.equals("Enter") && field instanceof TextArea;
    }
}
