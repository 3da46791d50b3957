package org.rafterbook.logbook;

import org.jspecify.annotations.Nullable;

/** A question to the logbook, answered from one moment's state of it. */
@FunctionalInterface
public interface Query<T extends @Nullable Object> {

    /** Runs on the caller's thread; the reader must not be kept. */
    T ask(Reader reader);
}
