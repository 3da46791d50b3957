/**
 * What the user can do: keys and actions, work off the JavaFX thread, and where errors go.
 *
 * <p>Everything that can be done is an {@link org.rafterbook.ui.action.Action}, made by {@link
 * org.rafterbook.ui.action.Keys}. Hand it to a button, field or row of the kit: the control shows its key, follows
 * whether it is enabled, and has the key shown over it while Alt is held; help lists it by itself.
 *
 * <p>Keys: Space goes to the place even when a button has the focus; Enter presses the focused button, else goes to the
 * place, after the focused field has kept its value; arrows stay with lists, tables, choices and drawings that {@link
 * org.rafterbook.ui.action.TakesArrows take} them; letters stay with text fields, while number fields let them through
 * unless they can be a unit's. A key held down counts once, but for the arrows.
 *
 * <p>Files, SQL and fits go through {@link org.rafterbook.ui.action.FxBackground}; whatever throws, there or in an
 * action, ends in {@link org.rafterbook.ui.action.Errors} as a sentence under the head.
 */
@NullMarked
package org.rafterbook.ui.action;

import org.jspecify.annotations.NullMarked;
