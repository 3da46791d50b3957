/** The screen on which tables and airframe sheets are read in: what each column is, the rows as read, what is wrong. */
@NullMarked
package org.rafterbook.ui.imports;

import org.jspecify.annotations.NullMarked;
