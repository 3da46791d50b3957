package org.rafterbook.ui.action;

/** A drawing that uses the arrow keys itself while it has the focus. */
public interface TakesArrows {}
