package org.rafterbook.units;

/**
 * A range as it was typed and understood; both ends are equal where one value was typed.
 *
 * @param lowSi lower end in SI
 * @param highSi upper end in SI, not below the lower
 * @param asTyped the text without blanks around it
 * @param readBack what was understood, in full
 */
public record TypedRange(Quantity quantity, double lowSi, double highSi, String asTyped, String readBack) {}
