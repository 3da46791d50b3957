package org.rafterbook.ui.look;

import java.util.Locale;
import java.util.Objects;

/** The three looks of the same sheet: for daylight, for the evening, and one that spares night-adapted eyes. */
public enum Theme {
    LIGHT("Light"),
    DARK("Dark"),
    DIM("Dim");

    private final String label;

    Theme(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** The theme that Ctrl+Shift+T turns to from this one. */
    public Theme next() {
        return values()[(ordinal() + 1) % values().length];
    }

    /** The colours of this theme, read once. */
    public Tokens tokens() {
        return Tokens.of(this);
    }

    String stylesheet() {
        return resource(name().toLowerCase(Locale.ROOT) + ".css");
    }

    static String resource(String name) {
        return Objects.requireNonNull(Theme.class.getResource(name), name).toExternalForm();
    }
}
