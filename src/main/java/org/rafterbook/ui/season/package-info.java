/** The season: every model's flights, versions and sessions. */
@NullMarked
package org.rafterbook.ui.season;

import org.jspecify.annotations.NullMarked;
