/** Quantities' units: reading what was typed, showing what was computed, converting between them. */
@NullMarked
package org.rafterbook.units;

import org.jspecify.annotations.NullMarked;
