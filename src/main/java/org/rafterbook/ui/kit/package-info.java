/** The controls every place is built of. */
@NullMarked
package org.rafterbook.ui.kit;

import org.jspecify.annotations.NullMarked;
