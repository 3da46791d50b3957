package org.rafterbook.logbook;

import java.time.Instant;

/**
 * What an undo took back.
 *
 * @param why the words the entry was made under
 * @param enteredAt when it was made
 */
public record Undone(String why, Instant enteredAt) {}
