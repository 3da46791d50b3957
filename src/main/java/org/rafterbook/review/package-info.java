/** Effects of trim changes, responses, ceiling risk, flights needed, what to try next. */
@NullMarked
package org.rafterbook.review;

import org.jspecify.annotations.NullMarked;
