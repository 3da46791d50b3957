package org.rafterbook.ui.motorbox;

import javafx.scene.Node;

/** One page of the form beside the tables. */
interface BoxPage {

    /** What it is about, in one word. */
    String name();

    Node node();

    /** Puts the cursor into the first field. */
    void edit();

    /** Adds what is typed as something new, then does what follows. */
    void add(Runnable then);

    /** Puts what is picked right by what is typed, then does what follows; does nothing where nothing is picked. */
    void correct(Runnable then);

    /** The name of what is picked to be put right, empty where something new is typed. */
    String picked();

    /** Empties the fields for something new. */
    void begin();

    /** Shows again what is recorded of what is picked, in the place of what was typed. */
    void reset();
}
