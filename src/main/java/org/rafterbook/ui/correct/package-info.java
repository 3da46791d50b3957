/**
 * The two corrections of what was recorded, as forms any place can show beside what they are about.
 *
 * <pre>
 * ThatTimeForm form = ThatTimeForm.ofFlight(tools, book, flightId, this::closeForm);
 * column.getChildren().setAll(form.node());   // and form.keys() are the keys while it is there
 * </pre>
 */
@NullMarked
package org.rafterbook.ui.correct;

import org.jspecify.annotations.NullMarked;
