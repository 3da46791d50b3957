package org.rafterbook.ui.action;

/**
 * One entry of the key line.
 *
 * @param caps the keys as shown on one cap, such as {@code P W T R L B} or {@code 1 … 6}
 * @param says what they do, in as few words as can be
 */
public record KeyHint(String caps, String says) {}
