/** Class sheets as data with rule book and year, and checking a version or a flight against them. */
@NullMarked
package org.rafterbook.rules;

import org.jspecify.annotations.NullMarked;
