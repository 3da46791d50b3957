package org.rafterbook.ui.draw;

/** How a mark is drawn, which says what the flight is worth. */
public enum MarkStyle {
    /** Filled: a clean flight. */
    CLEAN,
    /** Open with a tick upward: at least this long. */
    AT_LEAST,
    /** Open without a tick: not flown yet. */
    OPEN,
    /** Filled at the base only: very probably. */
    HALF
}
