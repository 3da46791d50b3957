/** Review: which trim change raised the time, and how the model handled. */
@NullMarked
package org.rafterbook.ui.review;

import org.jspecify.annotations.NullMarked;
