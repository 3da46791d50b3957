package org.rafterbook.ui.action;

import java.util.Locale;
import java.util.Map;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;

/** Spells keys: the one place where key events and the names on key caps meet. */
public final class KeyNames {

    private static final Map<KeyCode, String> NAMED = Map.ofEntries(
            Map.entry(KeyCode.SPACE, "Space"),
            Map.entry(KeyCode.ENTER, "Enter"),
            Map.entry(KeyCode.ESCAPE, "Esc"),
            Map.entry(KeyCode.BACK_SPACE, "Backspace"),
            Map.entry(KeyCode.DELETE, "Del"),
            Map.entry(KeyCode.TAB, "Tab"),
            Map.entry(KeyCode.LEFT, "←"),
            Map.entry(KeyCode.KP_LEFT, "←"),
            Map.entry(KeyCode.RIGHT, "→"),
            Map.entry(KeyCode.KP_RIGHT, "→"),
            Map.entry(KeyCode.UP, "↑"),
            Map.entry(KeyCode.KP_UP, "↑"),
            Map.entry(KeyCode.DOWN, "↓"),
            Map.entry(KeyCode.KP_DOWN, "↓"),
            Map.entry(KeyCode.PAGE_UP, "PgUp"),
            Map.entry(KeyCode.PAGE_DOWN, "PgDn"),
            Map.entry(KeyCode.HOME, "Home"),
            Map.entry(KeyCode.END, "End"));

    private KeyNames() {}

    /** The name of a pressed key with its modifiers; null for characters that only arrive as typed. */
    public static @Nullable String pressed(KeyEvent event) {
        KeyCode code = event.getCode();
        String name = NAMED.get(code);
        if (name == null && (code.isLetterKey() || code.isFunctionKey())) {
            name = code.getName().toUpperCase(Locale.ROOT);
        } else if (name == null && code.isDigitKey()) {
            String label = code.getName();
            name = label.substring(label.length() - 1);
        }
        if (name == null) {
            return null;
        }
        // Shift makes a letter no other letter, so that caps lock or a held Shift does not lose a flight
        boolean shift = event.isShiftDown() && (!code.isLetterKey() || event.isControlDown());
        return (event.isControlDown() ? "Ctrl+" : "") + (shift ? "Shift+" : "") + name;
    }

    /** The name of a typed character that is neither letter, digit nor space; null for others. */
    public static @Nullable String typed(KeyEvent event) {
        String text = event.getCharacter();
        if (text.length() != 1 || event.isControlDown() || event.isAltDown() || event.isMetaDown()) {
            return null;
        }
        char c = text.charAt(0);
        return c <= ' ' || c == 127 || Character.isLetterOrDigit(c) ? null : canonical(text);
    }

    static String canonical(String key) {
        return switch (key) {
            case "−" -> "-";
            default -> key.length() == 1 ? key.toUpperCase(Locale.ROOT) : key;
        };
    }
}
