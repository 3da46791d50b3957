package org.rafterbook.ui.motorbox;

import javafx.scene.Node;

/** One page of the form beside the tables. */
interface BoxPage {

    /** What it is about, in one word. */
    String name();

    Node node();

    /** Puts the cursor into the first field. */
    void edit();

    /** Adds what is typed as something new. */
    void add();

    /** Puts what is picked right by what is typed; does nothing where nothing is picked. */
    void correct();

    /** Whether there is something picked to be put right. */
    boolean hasPicked();
}
