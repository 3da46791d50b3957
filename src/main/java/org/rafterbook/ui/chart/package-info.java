/**
 * Charts and graduated rules on a canvas.
 *
 * <p>A {@link org.rafterbook.ui.chart.Chart} shows one mark a flight on graph paper between {@link
 * org.rafterbook.ui.chart.Layers layers} of estimates; a {@link org.rafterbook.ui.chart.Rule} stands along the top of a
 * place; a {@link org.rafterbook.ui.chart.Gauge} and the {@link org.rafterbook.ui.chart.MarginBar} are read like a scale;
 * {@link org.rafterbook.ui.chart.IntervalBar} is an effect in a row of a table. A layer is any {@link
 * org.rafterbook.ui.chart.Layer}: paint with the frame's pen at {@code frame.px(x)}, {@code frame.py(y)}.
 *
 * <p>Estimates are never drawn beyond what was flown: bands and curves are cut off there by themselves.
 */
@NullMarked
package org.rafterbook.ui.chart;

import org.jspecify.annotations.NullMarked;
