package org.rafterbook.ui.kit;

import org.rafterbook.units.UserError;

/** Reads what was typed into a field. */
@FunctionalInterface
public interface QuantityReader<T> {

    /**
     * The value of the text, which is not blank.
     *
     * @throws UserError with a sentence for the user if it cannot be read or is out of bounds
     */
    T read(String typed) throws UserError;
}
