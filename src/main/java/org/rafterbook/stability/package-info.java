/** The closed form, the lattice, margin, trim and placement. */
@NullMarked
package org.rafterbook.stability;

import org.jspecify.annotations.NullMarked;
