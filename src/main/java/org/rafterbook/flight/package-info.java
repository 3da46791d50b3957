/** Venues, sessions, air, flights, how they ended, trials and the figures derived from them. */
@NullMarked
package org.rafterbook.flight;

import org.jspecify.annotations.NullMarked;
