/** What the user can do: keys and actions, work off the JavaFX thread, and where errors go. */
@NullMarked
package org.rafterbook.ui.action;

import org.jspecify.annotations.NullMarked;
