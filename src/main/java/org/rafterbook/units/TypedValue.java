package org.rafterbook.units;

/**
 * A value as it was typed and understood.
 *
 * @param si the value in SI
 * @param unit the unit it was typed in, or the field's own where none was typed
 * @param asTyped the text without blanks around it
 * @param readBack what was understood, in full: "17:30", "14.5 in = 368.3 mm"; shown before the value is kept
 * @param bare true where no unit was typed, so that the reading rests on the field's unit alone
 */
public record TypedValue(Quantity quantity, double si, Unit unit, String asTyped, String readBack, boolean bare) {}
