/** The window round the places: rail, head, rule area, key line, help, dialogs. */
@NullMarked
package org.rafterbook.ui.shell;

import org.jspecify.annotations.NullMarked;
