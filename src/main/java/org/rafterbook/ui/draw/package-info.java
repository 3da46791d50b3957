/**
 * Drawing on a canvas in the theme's colours: the pen, the marks of versions, the line icons.
 *
 * <p>Extend {@link org.rafterbook.ui.draw.Drawing} and paint with the {@link org.rafterbook.ui.draw.Pen}; lengths of the
 * design (pixels at 100 %) go through {@code pen.px(...)}, so that they grow with the text. A drawing paints itself again
 * when its size, the theme or the text size changes; call {@code repaint()} when what it shows does.
 *
 * <p>A version's mark is {@link org.rafterbook.ui.draw.VersionMark#dealt} from its number and the same in every place.
 */
@NullMarked
package org.rafterbook.ui.draw;

import org.jspecify.annotations.NullMarked;
