package org.rafterbook.logbook;

import org.jspecify.annotations.Nullable;

/** A question to the logbook that may have no answer. */
@FunctionalInterface
public interface Lookup<T> {

    /** Runs on the caller's thread; the reader must not be kept. */
    @Nullable
    T ask(Reader reader);
}
