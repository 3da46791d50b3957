/**
 * How everything looks: themes, colour tokens, fonts, sizes in em.
 *
 * <p>Colours are named, never written as numbers: in stylesheets {@code -rb-ink}, on a canvas {@link
 * org.rafterbook.ui.look.Token#INK}. They stand in {@code light.css}, {@code dark.css} and {@code dim.css}; what all
 * themes share is in {@code common.css}, with sizes in em (1 em is 12.5 px at 100 %). {@link
 * org.rafterbook.ui.look.Look} dresses a scene and follows the flyer's choice of theme and text size at once.
 *
 * <p>The build puts each stylesheet beside itself in binary form, which JavaFX takes first: after changing one, compile
 * before looking.
 */
@NullMarked
package org.rafterbook.ui.look;

import org.jspecify.annotations.NullMarked;
