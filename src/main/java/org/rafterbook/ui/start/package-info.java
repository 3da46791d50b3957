/** The first start: what a flyer can do before anything is in the logbook, or while none can be opened. */
@NullMarked
package org.rafterbook.ui.start;

import org.jspecify.annotations.NullMarked;
