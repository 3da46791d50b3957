/**
 * The window round the places: rail, head, rule area, key line, help, dialogs.
 *
 * <p>A place implements {@link org.rafterbook.ui.shell.Place} and is handed {@link org.rafterbook.ui.shell.Tools}; the
 * {@link org.rafterbook.ui.shell.Shell} makes it at the first visit. To go elsewhere a place sets {@code
 * tools.showing()}. What was kept and what undo would take back, {@link org.rafterbook.ui.shell.Undoing} alone tells the
 * foot.
 */
@NullMarked
package org.rafterbook.ui.shell;

import org.jspecify.annotations.NullMarked;
