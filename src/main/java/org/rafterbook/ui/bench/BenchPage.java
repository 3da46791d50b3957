package org.rafterbook.ui.bench;

import javafx.scene.Node;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.work.BenchDesk;

/** One content of the right column, with the keys that work while it is there. */
interface BenchPage {

    Node node();

    Keys keys();

    /** Comes into sight for the model on the bench. */
    void opened(BenchDesk.Bench bench);

    /** The model on the bench was loaded again. */
    default void loaded(BenchDesk.Bench bench) {}
}
