/** Charts and graduated rules on a canvas. */
@NullMarked
package org.rafterbook.ui.chart;

import org.jspecify.annotations.NullMarked;
