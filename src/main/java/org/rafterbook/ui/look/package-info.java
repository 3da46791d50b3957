/** How everything looks: themes, colour tokens, fonts, sizes in em. */
@NullMarked
package org.rafterbook.ui.look;

import org.jspecify.annotations.NullMarked;
