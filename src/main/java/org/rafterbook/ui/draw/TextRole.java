package org.rafterbook.ui.draw;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;

/** The roles of type on a canvas, each with its size in em. */
public enum TextRole {
    /** Ticks of rules and charts. */
    MICRO(0.84, false),
    /** Chart text. */
    SMALL(0.88, false),
    /** Chart text that names an answer. */
    SMALL_BOLD(0.88, true),
    BODY(1, false),
    BOLD(1, true),
    CAPTION(0.96, true),
    FIGURE(1.12, true),
    HEAD(1.6, true);

    private record Key(String family, TextRole role, double em) {}

    private static final ConcurrentMap<Key, Font> MADE = new ConcurrentHashMap<>();

    private final double sizeEm;
    private final boolean bold;

    TextRole(double sizeEm, boolean bold) {
        this.sizeEm = sizeEm;
        this.bold = bold;
    }

    public double sizeEm() {
        return sizeEm;
    }

    Font font(String family, double em) {
        return MADE.computeIfAbsent(
                new Key(family, this, em),
                key -> Font.font(family, bold ? FontWeight.BOLD : FontWeight.NORMAL, sizeEm * em));
    }
}
