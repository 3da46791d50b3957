/** The Bench: a model drawn to scale, its settings, margin and rig strip. */
@NullMarked
package org.rafterbook.ui.bench;

import org.jspecify.annotations.NullMarked;
