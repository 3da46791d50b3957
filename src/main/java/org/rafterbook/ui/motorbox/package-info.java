/** The Motor box: batches, motors and winds. */
@NullMarked
package org.rafterbook.ui.motorbox;

import org.jspecify.annotations.NullMarked;
