package org.rafterbook.ui.kit;

import org.rafterbook.units.Parsed;

/** Reads what was typed into a field: the value, or a sentence why not. */
@FunctionalInterface
public interface FieldReader<T> {

    /** What came of the text, which is not blank. */
    Parsed<T> read(String typed);
}
