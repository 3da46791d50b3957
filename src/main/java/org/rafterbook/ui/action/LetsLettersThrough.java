package org.rafterbook.ui.action;

/** A text field in which single letters still work as keys of the place. */
public interface LetsLettersThrough {

    /** Whether the field wants this letter all the same, because it can go on what is typed (a unit). */
    boolean takes(char letter);
}
