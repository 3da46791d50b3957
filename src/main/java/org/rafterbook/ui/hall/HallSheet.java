package org.rafterbook.ui.hall;

import javafx.scene.Node;

/** What the Hall shows in one of its states. */
interface HallSheet {

    /** The sheet at the left. */
    Node node();

    /** Shows what was read last; called again after each reading. */
    void show(HallData data);

    /** Fits the sheet to little width or height. */
    default void fold(boolean narrow, boolean low) {}
}
