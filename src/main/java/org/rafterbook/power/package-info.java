/** Rubber batches, motors, winds, torque curves, limits and energy. */
@NullMarked
package org.rafterbook.power;

import org.jspecify.annotations.NullMarked;
