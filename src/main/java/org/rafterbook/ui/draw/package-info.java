/** Drawing on a canvas in the theme's colours: the pen, the marks of versions, the line icons. */
@NullMarked
package org.rafterbook.ui.draw;

import org.jspecify.annotations.NullMarked;
