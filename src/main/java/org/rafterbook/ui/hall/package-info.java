/** The Hall: the evening, the next flight, the watch and the landing. */
@NullMarked
package org.rafterbook.ui.hall;

import org.jspecify.annotations.NullMarked;
