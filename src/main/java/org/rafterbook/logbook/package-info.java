/** The SQLite store: open, migrate, back up, query, change log, undo. */
@NullMarked
package org.rafterbook.logbook;

import org.jspecify.annotations.NullMarked;
